import type { Cluster } from "./clusters.ts";
import { addTo, isPlain, nearest } from "./dom/ancestors.ts";
import { letters } from "./dom/letters.ts";
import { kindOf, LEAST_MEMBERS } from "./members.ts";
import type { PriceLeaf } from "./money/written-price.ts";

/** Members of a list looked at; a bound on hostile pages. */
const MOST_MEMBERS = 1000;
/** Members that one product is made of, at most. */
const MOST_PARTS = 12;
/** Letters that they say besides their prices, at least. */
const LEAST_SAID = 2;

/** The members of a list, and all elements in it that hold a picture, or a price. */
interface Strip {
  readonly members: readonly Element[];
  readonly pictured: ReadonlySet<Element>;
  readonly priced: ReadonlySet<Element>;
}

/** What lies between some elements and the list that they are in, and they. */
function holders(elements: readonly Element[], list: Element): ReadonlySet<Element> {
  const found = new Set<Element>();
  for (const element of elements) nearest(element, (up) => up === list || !found.add(up));
  return found;
}

/** Where members begin that belong together: at the first picture behind a price, or before it where all have the same there. */
function beginnings({ members, pictured, priced }: Strip): readonly number[] {
  const starts: number[] = [];
  let sold = true;
  for (const [at, member] of members.entries()) {
    if (sold && pictured.has(member)) {
      starts.push(at);
      sold = false;
    }
    sold ||= priced.has(member);
  }
  const before = (start: number, steps: number) => {
    const member = members[start - steps];
    return member && !priced.has(member) && !pictured.has(member) ? kindOf(member) : "";
  };
  const leads = (steps: number) => {
    const [kind, ...others] = new Set(starts.map((start) => before(start, steps)));
    return Boolean(kind) && others.length === 0;
  };
  let above = 0;
  while (starts.length > 1 && above < MOST_PARTS && leads(above + 1)) above++;
  return starts.map((start) => start - above);
}

/** The members of a list, by what belongs together; what follows the last is no longer than the others. */
function runsOf(strip: Strip): readonly (readonly Element[])[] {
  const starts = beginnings(strip);
  const lengths = starts.slice(1).map((start, i) => start - (starts[i] ?? 0));
  const last = lengths.length > 0 ? Math.max(...lengths) : MOST_PARTS;
  return starts.map((start, i) => strip.members.slice(start, start + (lengths[i] ?? last)));
}

/** The row of pictures in a run of rows, or undefined. */
const pictureRow = (run: readonly Element[], { pictured }: Strip): Element | undefined =>
  run.find((member) => pictured.has(member));

/** Whether a row shows pictures in several of its cells. */
const hasCells = (row: Element | undefined, { pictured }: Strip): boolean =>
  [...(row?.children ?? [])].filter((cell) => pictured.has(cell)).length > 1;

/** Rows of cells as columns. */
function columnsOf(run: readonly Element[], strip: Strip): readonly (readonly Element[])[] {
  const cells = [...(pictureRow(run, strip)?.children ?? [])];
  const even = run.filter(({ childElementCount }) => childElementCount === cells.length);
  return cells.map((_, at) => even.flatMap((row) => [...row.children].slice(at, at + 1).filter(isPlain)));
}

/** What may be a product each: the runs of a list, or the columns of all where their pictures stand in rows. */
function heapsOf(strip: Strip): readonly (readonly Element[])[] {
  const runs = runsOf(strip);
  const inRows = runs.some((run) => hasCells(pictureRow(run, strip), strip));
  return inRows ? runs.flatMap((run) => columnsOf(run, strip)) : runs;
}

/** Puts each thing to those parts, among several, that hold it. */
function sorted<T>(
  things: readonly T[],
  placeOf: ReadonlyMap<Element, readonly Element[]>,
  elementOf: (thing: T) => Element,
): ReadonlyMap<readonly Element[], readonly T[]> {
  const found = new Map<readonly Element[], T[]>();
  for (const thing of things) {
    const part = nearest(elementOf(thing), (up) => placeOf.has(up));
    const parts = part && placeOf.get(part);
    if (parts) addTo(found, parts, thing);
  }
  return found;
}

/** Whether parts with a picture are a product's: a few, with a price, that say more than that. */
function isWhole({ parts, prices }: Cluster): boolean {
  const said = parts.reduce((sum, { textContent }) => sum + letters(textContent), 0);
  const asked = prices.reduce((sum, { text }) => sum + letters(text), 0);
  const isFew = parts.length > 1 && parts.length <= MOST_PARTS;
  return isFew && prices.length > 0 && said >= asked + LEAST_SAID;
}

/**
 * Takes a list apart whose products have no element of their own: picture, name and price of each follow one another, or
 * stand in rows below one another. None where it is anything else, or not each of three or more has a picture of the same
 * kind, a price and something said. `pictures`, `prices`: those that meet nowhere below `list`
 */
export function partedIn(
  list: Element,
  pictures: readonly Element[],
  prices: readonly PriceLeaf[],
): readonly Cluster[] {
  if (Math.min(pictures.length, prices.length) < LEAST_MEMBERS) return [];
  const members = [...list.children].slice(0, MOST_MEMBERS).filter(isPlain);
  const priced = prices.map(({ element }) => element);
  const all = heapsOf({ members, pictured: holders(pictures, list), priced: holders(priced, list) });
  const placeOf = new Map(all.flatMap((parts) => parts.map((part) => [part, parts] as const)));
  const shown = sorted(pictures, placeOf, (picture) => picture);
  const asked = sorted(prices, placeOf, ({ element }) => element);
  const found = all.flatMap((parts) => {
    const [own, paid] = [shown.get(parts) ?? [], asked.get(parts) ?? []];
    const root = parts.find((part) => own[0] && part.contains(own[0]));
    return root ? { root, parts, pictures: own, prices: paid, holdsMore: false } : [];
  });
  const kinds = new Set(found.map(({ root }) => kindOf(root)));
  // The last row of a table may have cells to spare.
  const filled = all.filter((parts) => shown.has(parts) || asked.has(parts));
  const isAll = found.length === filled.length && kinds.size === 1 && found.every(isWhole);
  return isAll && found.length >= LEAST_MEMBERS ? found : [];
}
