import { nameOf, parentOf } from "../dom/ancestors.ts";
import { hasWord } from "../dom/letters.ts";
import { headingText } from "../dom/plain-text.ts";
import { readTag } from "../money/price.ts";
import { namesPart } from "./says-any.ts";

/** What markup calls the maker of a product, and its name. */
const MAKER = /brand|vendor|maker|designer|marca|marke|marque/i;
const NAME = /(?<![a-z])(name|title)(?![a-z])/i;

/** What a heading says, or what is called a name right after it where it is called a maker, or the heading right after it that begins with that and says more. */
export function nameBy(heading: Element): string {
  const written = headingText(heading);
  const behind = heading.nextElementSibling ?? parentOf(heading)?.nextElementSibling;
  const name = MAKER.test(nameOf(heading)) && behind && NAME.test(nameOf(behind)) ? headingText(behind) : "";
  if (hasWord(name)) return name;
  const next = heading.nextElementSibling;
  const more = next && /^H[2-4]$/.test(next.tagName) ? headingText(next) : "";
  const [first = ""] = more.startsWith(`${written} `) ? more.slice(written.length + 1).split(" ") : [];
  return first && !namesPart(first) ? more : written;
}

/** A name without the sign of money behind it. */
const withoutSign = (text: string): string => text.replace(/([^\p{L}\p{N})]|\b[A-Z]{3}\b)+$/u, "");

/** What a heading's text names, without what it says of money. */
export interface WrittenName {
  /** The text without a price behind it; a size that looks like one is part of it. */
  readonly name: string;
  /** Whether the text has a word that may name something. */
  readonly isName: boolean;
}

/** Reads the name in what a heading says. */
export function readName(written: string): WrittenName {
  const { amounts, words } = readTag(written);
  const [amount] = amounts;
  if (!amount) return { name: written, isName: /\p{L}{2}/u.test(written) };
  // What stands behind an amount is what it is for: "89.99 / piece".
  const before = written.slice(0, written.indexOf(amount.written));
  return {
    name: written.startsWith(words) ? words : withoutSign(before) || written,
    isName: hasWord(words) && hasWord(before),
  };
}
