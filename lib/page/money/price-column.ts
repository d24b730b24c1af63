import { parentOf } from "../dom/ancestors.ts";
import { readTag } from "./price.ts";
import { FIELDS } from "./price-in-field.ts";
import { isPriceLabel } from "./price-label.ts";
import { LONGEST_SOURCE } from "./tag-size.ts";
import type { WrittenPrice } from "./written-price.ts";

/** A table has at least so many columns and rows below its head; no more rows are looked at. */
const LEAST_COLUMNS = 3;
const LEAST_ROWS = 2;
const MOST_ROWS = 200;
/** Elements above a label within which its row is. */
const STEPS_UP = 3;

const NUMBER = /^\d[\d.,' ]*$/;

/** The cell of a head that a label stands in: the element beside others around it, or null. */
function cellAround(label: Node): Element | null {
  let cell = parentOf(label);
  for (let step = 0; cell && step < STEPS_UP; step++) {
    const row = parentOf(cell);
    if (row && row.children.length > 1) return row.children.length < LEAST_COLUMNS ? null : cell;
    cell = row;
  }
  return null;
}

/** The prices without a sign below a label that heads their column, in a table of whatever elements; none for any other text. */
export function pricesBelow(label: Node): readonly WrittenPrice[] {
  const written = label.nodeType === 3 ? (label.nodeValue ?? "") : "";
  if (written.length > LONGEST_SOURCE || !isPriceLabel(written.trim())) return [];
  const cell = cellAround(label);
  const head = cell && parentOf(cell);
  const columns = head?.children.length ?? 0;
  const list = head && (head.closest("table") ?? parentOf(head));
  if (!cell || !head || !list) return [];
  const at = [...head.children].indexOf(cell);
  const all = list.localName === "table" ? list.querySelectorAll("tr") : list.children;
  const rows = [...all].slice(0, MOST_ROWS).filter((row) => row !== head && row.children.length === columns);
  if (rows.length < LEAST_ROWS) return [];
  return rows.flatMap((row) => {
    const element = row.children[at];
    const text = element?.textContent.trim() || element?.querySelector(FIELDS)?.getAttribute("value") || "";
    const { amounts } = readTag(NUMBER.test(text) ? `${text},-` : "");
    return element && amounts.length > 0 ? [{ element, text, tag: text, words: "", amounts }] : [];
  });
}
