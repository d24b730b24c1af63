import type { Context } from "../context.ts";
import { allIn, nameOf } from "../dom/ancestors.ts";
import { letters } from "../dom/letters.ts";
import { bareName, headingText, nameKey } from "../dom/plain-text.ts";
import { forgetOldest, learned } from "../learned.ts";
import { LEAST_MEMBERS } from "../members.ts";
import { saidBy } from "../money/text-run.ts";

/** Headings looked at in one reading. */
const MOST_HEADINGS = 2000;
/** What markup calls a brand in a name. */
const CALLED_BRAND = /(^|[\s_-])(brand|vendor|marke|marque|marca|merk)([\s_-]|$)/i;

const isBare = ({ nodeType, nodeValue }: Node): boolean => nodeType === 3 && letters(nodeValue ?? "") > 0;

/** The first of the elements that a heading is made of, where it is made of several and no text stands between them; or what is called a brand before all text. */
function firstOf(heading: Element): Element | null {
  const first = heading.children[0];
  if (!first) return null;
  const nodes = [...heading.childNodes];
  const bare = nodes.findIndex(isBare);
  if (bare < 0 && heading.childElementCount === 1) return firstOf(first);
  if (bare >= 0) return bare > nodes.indexOf(first) && CALLED_BRAND.test(nameOf(first)) ? first : null;
  return first;
}

/** The line in small print that a heading begins with, or null. */
function smallLine(heading: Element): Element | null {
  const small = heading.querySelector("small:has(+ br)");
  return small && headingText(heading).startsWith(headingText(small)) ? small : null;
}

/** What follows the first part of headings, by that part. */
const restsOf = learned(
  () => new Map<string, Set<string>>(),
  (known, scopes) => {
    const headings = scopes.flatMap((scope) => allIn(scope, "h2,h3,h4,h5,h6"));
    for (const heading of headings.slice(0, MOST_HEADINGS)) {
      const first = nameKey(firstOf(heading)?.textContent ?? "");
      const rest = first && nameKey(heading.textContent).slice(first.length);
      if (rest) known.set(first, (known.get(first) ?? new Set()).add(rest));
    }
    forgetOldest(known);
  },
);

/** Headings of one kind that tell what all of it say. */
const MOST_OF_KIND = 500;

/** What headings say, and how often. */
interface Said {
  readonly counts: Map<string, number>;
  /** The same for each tag with its classes: what all of those say together. */
  readonly kinds: Map<string, { readonly names: Set<string>; count: number }>;
}

/** A tag with all its classes, as a style sheet knows it. */
const styleOf = ({ tagName, classList }: Element): string => `${tagName} ${classList.value}`;

const saidOf = learned(
  (): Said => ({ counts: new Map(), kinds: new Map() }),
  ({ counts, kinds }, scopes) => {
    const headings = scopes.flatMap((scope) => allIn(scope, "h2,h3,h4,h5,h6"));
    for (const heading of headings.slice(0, MOST_HEADINGS)) {
      const key = nameKey(heading.textContent);
      counts.set(key, (counts.get(key) ?? 0) + 1);
      const kind = kinds.get(styleOf(heading)) ?? { names: new Set(), count: 0 };
      kinds.set(styleOf(heading), kind);
      if (kind.count >= MOST_OF_KIND) continue;
      kind.names.add(key);
      kind.count++;
    }
    forgetOldest(counts);
  },
);

/** How often a heading says what others do, from 0 (there is no second) up to 1. */
const repeated = (heading: Element, context: Context): number =>
  1 - 1 / (saidOf(context).counts.get(nameKey(heading.textContent)) ?? 1);

/** How much a heading is like others, or all of its kind are, from 0 up to 1: names differ, brands and makers come again. */
export function commonness(heading: Element, context: Context): number {
  const { names, count } = saidOf(context).kinds.get(styleOf(heading)) ?? { names: new Set(), count: 0 };
  return Math.max(repeated(heading, context), count < LEAST_MEMBERS ? 0 : 1 - names.size / count);
}

/** As common as what three headings say. */
const COMMON = 1 - 1 / 3;

/** Whether a heading says what others say, too: "Description", the name of a group. */
export const isCommon = (heading: Element, context: Context): boolean => repeated(heading, context) >= COMMON;

/** Pictures looked at in one reading, and places that those of one name lead to, or files of it, from which on it is no product's. */
const MOST_PICTURES = 2000;
const MANY_PLACES = 3;

/** An address that leads to no other page. */
const NOWHERE = /^(#|javascript:|$)/i;

/** Some of what is found with a name, no more than is asked for: most names have one. */
type Found = Map<string, readonly string[]>;

function find(found: Found, name: string, one: string): void {
  const before = found.get(name) ?? [];
  if (before.length < MANY_PLACES && !before.includes(one)) found.set(name, [...before, one]);
}

/** Where pictures of one name lead; of those that lead nowhere, of which file they are. */
const calledOf = learned(
  (): { readonly places: Found; readonly files: Found } => ({ places: new Map(), files: new Map() }),
  ({ places, files }, scopes) => {
    const pictures = scopes.flatMap((scope) => allIn(scope, "img[alt]"));
    for (const picture of pictures.slice(0, MOST_PICTURES)) {
      const name = picture.getAttribute("alt");
      if (!name) continue;
      const place = picture.closest("a")?.getAttribute("href") ?? "";
      if (!NOWHERE.test(place)) find(places, name, place);
      else find(files, name, picture.getAttribute("src") ?? "");
    }
    forgetOldest(places);
    forgetOldest(files);
  },
);

/** Whether a template calls the pictures of all products so; those of one are called as a text says in `parts`, what it is made of. */
export function namesAnyPicture(name: string, parts: readonly Element[], context: Context): boolean {
  const { places, files } = calledOf(context);
  const isOfMany = (found: Found) => (found.get(name)?.length ?? 0) >= MANY_PLACES;
  return (
    isOfMany(places) || (isOfMany(files) && !parts.some(({ textContent }) => textContent.includes(name)))
  );
}

/** Learns what a page's headings and pictures have in common, in several steps: the first name that is asked for needs it. */
export function* learnNames(context: Context): Generator<undefined, void, undefined> {
  for (const learn of [restsOf, saidOf, calledOf]) {
    learn(context);
    yield;
  }
}

/** A brand stands before different names, which are as a rule longer: a colour behind a name is shorter. */
const isBrand = (first: string, rests: ReadonlySet<string>): boolean =>
  rests.size > 1 && [...rests].join("").length >= first.length * rests.size;

/** What parts a name from its maker, at the end of a text. */
const PARTS = /\S\s*[/|]\s*$/;

/** The maker behind a name, in an element of its own that such a mark parts from it; or null. */
function makerBehind(heading: Element): Element | null {
  const last = heading.lastElementChild;
  return last && last === heading.lastChild && PARTS.test(saidBy(last.previousSibling)) ? last : null;
}

/** The text of a heading, without the brand before it, an element of its own that other headings have too or a line in small print; or the maker behind it. */
export function nameInHeading(heading: Element, context: Context): string {
  const maker = makerBehind(heading);
  const all = headingText(heading);
  const whole = maker ? bareName(all.slice(0, -headingText(maker).length).trim()) : all;
  const first = firstOf(heading) ?? smallLine(heading);
  if (!first) return whole;
  const brand = nameKey(first.textContent);
  const isCalled = CALLED_BRAND.test(nameOf(first));
  if (first.tagName !== "SMALL" && !isCalled && !isBrand(brand, restsOf(context).get(brand) ?? new Set()))
    return whole;
  return whole.slice(headingText(first).length).replace(/^[^\p{L}\p{N}]+/u, "");
}
