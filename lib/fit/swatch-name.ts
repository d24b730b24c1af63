import { everydayTerm } from "../color/everyday-term.ts";
import { nameColor } from "../color/name-color.ts";
import type { ShownSwatch } from "./prepared-piece.ts";

const names = new WeakMap<ShownSwatch, string>();

/** "deep teal", or its metal; worked out once per prepared swatch, for a name costs as much as hundreds of comparisons. */
export function swatchName(shown: ShownSwatch): string {
  const known = names.get(shown);
  if (known !== undefined) return known;
  const name = shown.swatch.finish ?? nameColor(shown.swatch.oklab).everyday;
  names.set(shown, name);
  return name;
}

/** "teal": the one plain word, or its metal. */
export function plainWord({ swatch }: ShownSwatch): string {
  return swatch.finish ?? everydayTerm(swatch.oklab);
}
