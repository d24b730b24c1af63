import { allIn, parentOf } from "./ancestors.ts";
import { plainText } from "./plain-text.ts";

/** What may say what the next cell or element holds, and how many are looked at. */
const LABELS = "th,td,dt,label,b,strong,div>span:first-child,li>span:first-child,p>span:first-child,li,p";
const MOST_LABELS = 600;
/** Characters of a label with its value. */
const LONGEST = 100;

/** What stands under the head of a column, in a table with one row of that width. */
function valueUnder(head: Element): Element | null {
  const row = parentOf(head);
  const cells = [...(row?.children ?? [])];
  if (!cells.every(({ tagName }) => tagName === "TH")) return null;
  const rows = [...(head.closest("table")?.querySelectorAll("tr") ?? [])];
  const [first, value, ...more] = rows.filter((one) => one.childElementCount === cells.length);
  return first === row && more.length === 0 ? (value?.children[cells.indexOf(head)] ?? null) : null;
}

/** What stands behind a label: in the next cell, or beside the element that holds nothing else; or under it, in a table. */
function valueBehind(label: Element): Element | null {
  const under = label.tagName === "TH" ? valueUnder(label) : null;
  if (under) return under;
  const around = parentOf(label);
  const alone = around && plainText(around.textContent) === plainText(label.textContent);
  const value = alone ? around.nextElementSibling : label.nextElementSibling;
  return value && plainText(value.textContent) && !value.querySelector("input:not([type=hidden]),button")
    ? value
    : null;
}

/** What tables and lists of facts in a document say behind such labels, which may begin the text of the value. */
export const labelled = (doc: Document, label: RegExp): readonly Element[] =>
  allIn(doc, LABELS)
    .slice(0, MOST_LABELS)
    .flatMap((one) => {
      const text = plainText(one.textContent);
      if (text.length > LONGEST || !label.test(text)) return [];
      return text.replace(label, "").trim() ? one : (valueBehind(one) ?? []);
    });
