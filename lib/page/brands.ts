import { allIn } from "./ancestors.ts";
import type { Context } from "./context.ts";
import { letters } from "./letters.ts";
import { headingText, nameKey } from "./plain-text.ts";

/** Headings of a document looked at. */
const MOST_HEADINGS = 2000;

/** What a heading says in its first element and in those after it; null where it is not made of several. */
function partsOf(heading: Element): readonly [first: string, rest: string] | null {
  const [child, second] = heading.children;
  if (!child || !second) return null;
  const bare = [...heading.childNodes].some(
    (node) => node.nodeType === 3 && letters(node.nodeValue ?? "") > 0,
  );
  const first = headingText(child);
  const rest = headingText(heading)
    .slice(first.length)
    .replace(/^[^\p{L}\p{N}]+/u, "");
  return bare || !letters(first) || !letters(rest) ? null : [first, rest];
}

/** Brands by reading: a context lives as long. */
const known = new WeakMap<Context, ReadonlySet<string>>();

/** First parts of headings that stand before different names, which are as a rule longer: a colour behind a name is shorter. */
function findBrands(doc: Document): ReadonlySet<string> {
  const names = new Map<string, Set<string>>();
  for (const heading of allIn(doc, "h2,h3,h4,h5,h6").slice(0, MOST_HEADINGS)) {
    const [first, rest] = (partsOf(heading) ?? []).map(nameKey);
    if (first && rest) names.set(first, (names.get(first) ?? new Set()).add(rest));
  }
  const isBrand = ([first, rests]: [string, ReadonlySet<string>]) =>
    rests.size > 1 && [...rests].join("").length >= first.length * rests.size;
  return new Set([...names].filter(isBrand).map(([first]) => first));
}

/** The text of a heading, without the brand in an element of its own before it that other headings have too. */
export function nameInHeading(heading: Element, context: Context): string {
  const [first, rest] = partsOf(heading) ?? [];
  if (!first || !rest) return headingText(heading);
  const brands = known.get(context) ?? findBrands(context.doc);
  known.set(context, brands);
  return brands.has(nameKey(first)) ? rest : headingText(heading);
}
