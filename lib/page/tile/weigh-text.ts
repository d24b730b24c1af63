import type { Context } from "../context.ts";
import { parentOf } from "../dom/ancestors.ts";
import { saysToBuy } from "../dom/buttons.ts";
import { linkUrl } from "../dom/link.ts";
import { nameKey, plainKey, plainText } from "../dom/plain-text.ts";
import { namesPart } from "../main/says-any.ts";
import { commonness } from "./brands.ts";
import { CALLED, LONGEST_TOLD, scoreWording } from "./score-wording.ts";
import { toldByNames } from "./told-by-names.ts";
import { wholeLine } from "./whole-line.ts";

/** Levels above a text in one product; a tile has about five. */
const LEVELS = 7;

/** A text that may be the name of a product. */
export interface Guess {
  readonly text: string;
  /** The heading that the text is all of, if it is. */
  readonly from: Element | null;
  readonly score: number;
}

const HEADING = "h1,h2,h3,h4,h5,h6";

/** A heading is longer than this only where it holds more than a name, in characters. */
const LONGEST_MARKED = 160;

/** What it counts that the picture or the link is called just so; a heading counts as much as a part of that. */
const TOLD_WHOLE = 3.5;

/** What it counts against a text that it stands on a button, or says what one does. */
const PRESSED = 6;

/** What it counts that the address of the product's page ends in just that. */
const SPELLED = 5;

/** The most that the words of a text can add to what its place tells, beside what it is told or spelled by. */
const MOST_BY_WORDS = CALLED + 2;

/** What a product is made of, and the elements at which what is said of a text ends. */
export interface Where {
  readonly parts: readonly Element[];
  readonly ends: ReadonlySet<Element | null>;
  /** What the address of the product's page ends in, for comparing; "" where that tells nothing. */
  readonly spelled: string;
  /** The words of that, in lower case. */
  readonly words: readonly string[];
}

/** Whether a name, in letters and digits, is what the address of its page ends in. */
const isSpelled = (text: string, spelled: string): boolean =>
  spelled !== "" && Math.abs(nameKey(text).length - spelled.length) < 3 && plainKey(text) === spelled;

/** What it counts that a text has all words of the address, as many at least and half of them. */
const WORDED = 3.5;
const LEAST_WORDS = 2;

/** The part of the words of its page's address that a short text has, from 0 to 1; 0 where they are few. */
function worded(text: string, words: readonly string[]): number {
  if (words.length < LEAST_WORDS || text.length > LONGEST_TOLD) return 0;
  const key = plainKey(text);
  const found = words.filter((word) => key.includes(word)).length;
  return found >= LEAST_WORDS && 2 * found >= words.length ? found / words.length : 0;
}

/** What it counts that a text is bold, or larger than what it stands among; and by how much it then is. Layout choice. */
const LOUD = 0.5;
const BOLD = 600;
const LARGER = 1.1;

/** How much a text stands out by its letters among those of a product. */
function loudness(holder: Element, [around]: readonly Element[]): number {
  const view = holder.ownerDocument.defaultView;
  const style = view?.getComputedStyle(holder);
  if (!view || !style || !around) return 0;
  const size = Number.parseFloat(style.fontSize) / Number.parseFloat(view.getComputedStyle(around).fontSize);
  return (Number(style.fontWeight) >= BOLD ? LOUD : 0) + (size > LARGER ? LOUD : 0);
}

/** Whether a text and no other lies over something, as a badge does over a picture. */
const liesOver = (holder: Element): boolean =>
  [holder, parentOf(holder)].some(
    (element) =>
      element?.ownerDocument.defaultView?.getComputedStyle(element).position === "absolute" &&
      plainText(element.textContent) === plainText(holder.textContent),
  );

/** Whether a text is not displayed in a tile that is: that of a dialog, of another variant. */
const isConcealed = (holder: Element, parts: readonly Element[]): boolean =>
  !holder.checkVisibility() && parts.some((part) => part.checkVisibility());

/** The text and how much it looks like the name of a product, where that is more than `least`; `told`: what its picture and link are called. */
export function weigh(
  written: string,
  holder: Element,
  { parts, ends, spelled, words }: Where,
  link: string | null,
  told: readonly string[],
  least: number,
  context: Context,
): Guess | null {
  let marked: Element | null = null;
  let score = 0;
  let pressed = 0;
  for (
    let up: Element | null = holder, level = 0;
    up && !ends.has(up) && level < LEVELS;
    up = parentOf(up), level++
  ) {
    const { tagName } = up;
    if (tagName === "BUTTON" || tagName === "LABEL") pressed += PRESSED;
    // A link elsewhere names what is there.
    if (tagName === "A" && up.hasAttribute("href")) score += link && (linkUrl(up) ?? link) !== link ? -3 : 1;
    if (marked) continue;
    const kind = toldByNames(up);
    // What holds a heading is no name but what stands around one.
    if (kind === 1 && up.querySelector(HEADING)) continue;
    if (kind < 0) score -= 4;
    else if (kind > 0) {
      marked = up;
      score += 2 + kind;
    }
  }
  // A name that is pressed to open its product is what the picture is called, too.
  if (pressed > 0 && !told.includes(nameKey(written))) score -= pressed;
  if (score + MOST_BY_WORDS + WORDED + (spelled ? SPELLED : TOLD_WHOLE) <= least) return null;
  const whole = plainText(marked?.textContent);
  // What the picture is called, too, is the name, whatever stands with it in what is marked as one.
  const own = plainText(written);
  const isHeading = marked !== null && /^H[1-6]$/.test(marked.tagName);
  const isTold = marked !== null && !isHeading && told.includes(nameKey(own));
  const from = isTold || whole.length >= LONGEST_MARKED ? null : marked;
  const text = isTold ? own : from ? whole : plainText(wholeLine(written, holder));
  const key = nameKey(text);
  score += scoreWording(text, marked !== null, isHeading);
  // One page for all is called "Details", as the link to it is.
  if (isSpelled(text, spelled) && !namesPart(text)) score += SPELLED;
  else if (key.length > 2 && told.some((one) => one.includes(key) || key.includes(one)))
    score += told.includes(key) ? TOLD_WHOLE : 3;
  score += WORDED * worded(text, words);
  // Of several headings the first that no other tile has; of other texts the longest.
  score += marked && isHeading ? -commonness(marked, context) : Math.min(key.length, 16) / 16;
  if (!marked && text.length <= LONGEST_TOLD && score + 2 * LOUD > least) score += loudness(holder, parts);
  if (score > least && (isConcealed(holder, parts) || (!marked && liesOver(holder)))) score -= 2;
  if (score > least && !marked && saysToBuy(text)) score -= PRESSED;
  return { text, from, score };
}
