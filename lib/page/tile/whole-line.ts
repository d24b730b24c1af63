/** Characters of a name that is broken into lines by hand, with its white space, and what none of its lines has: money, a measure, a label, what became of it. */
const LONGEST_BROKEN = 100;
const NO_LINE =
  /\d{2}|[:：|·$€£₹%]|\b(sold|stock|agotado|esgotado|esaurito|épuisé|ausverkauft|uitverkocht|slutsåld)\b/i;

/** The text of which `written` is a line, where its element holds no more than few words broken by hand; else `written`. */
export function wholeLine(written: string, { childNodes, textContent }: Element): string {
  const isBroken = childNodes.length > 1 && textContent.length < LONGEST_BROKEN;
  const isLine = ({ nodeType, nodeName, nodeValue }: Node) =>
    nodeName === "BR" || (nodeType === 3 && !NO_LINE.test(nodeValue ?? ""));
  return isBroken && [...childNodes].every(isLine)
    ? [...childNodes].map(({ nodeValue }) => nodeValue ?? " ").join("")
    : written;
}
