import { chromaOf } from "./convert.ts";
import { deltaE2000 } from "./difference.ts";
import { isccName, nearestTerm } from "./everyday-term.ts";
import { howTheyDiffer } from "./how-they-differ.ts";
import { labFromOklab } from "./lab.ts";
import { isNeutral } from "./neutral.ts";
import { neutralName } from "./neutral-name.ts";
import type { Oklab } from "./oklab.ts";
import { spokenName } from "./spoken-name.ts";
import { SAME_SHADE } from "./thresholds.ts";

/** What people call a colour ("dusty pink", "navy blue"), and its exact ISCC-NBS name in British spelling. */
export interface ColorName {
  readonly everyday: string;
  readonly iscc: string;
  /** The colour that is called so. */
  readonly oklab: Oklab;
}

/** One swatch is named in the sentence of every piece that it goes with, and a name costs as much as tens of comparisons. */
const named = new WeakMap<Oklab, ColorName>();

/** Names a colour: in everyday words, among them its everyday term, and by its ISCC-NBS block. @throws ColorError when a part is not finite. */
export function nameColor(c: Oklab): ColorName {
  const known = named.get(c);
  if (known !== undefined) return known;
  const name = nameAnew(c);
  named.set(c, name);
  return name;
}

function nameAnew(c: Oklab): ColorName {
  const iscc = isccName(c);
  if (isNeutral(c[0], chromaOf(c))) return { everyday: neutralName(c[0]), iscc, oklab: c };
  const { term, word } = nearestTerm(c);
  const everyday = word === undefined ? spokenName(c, term, iscc) : `${word} ${term}`;
  return { everyday, iscc, oklab: c };
}

/**
 * Whether two colours look different, so that words must part them: more than the same shade. With any less, the words would
 * part what every verdict calls one shade.
 */
export function lookDifferent(a: ColorName, b: ColorName): boolean {
  return deltaE2000({ lab: labFromOklab(a.oklab) }, { lab: labFromOklab(b.oklab) }) > SAME_SHADE;
}

/**
 * What to call two colours that are spoken of together: their everyday names; where they look different and share one, with
 * the ISCC-NBS name in brackets; where they share that too, with how they differ: "beige (the lighter)". Symmetric.
 */
export function tellApart(a: ColorName, b: ColorName): readonly [a: string, b: string] {
  if (a.everyday !== b.everyday || !lookDifferent(a, b)) return [a.everyday, b.everyday];
  const [first, second] = a.iscc === b.iscc ? howTheyDiffer(a.oklab, b.oklab) : [a.iscc, b.iscc];
  return [`${a.everyday} (${first})`, `${b.everyday} (${second})`];
}
