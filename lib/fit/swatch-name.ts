import { everydayTerm } from "../color/everyday-term.ts";
import { tellApart } from "../color/name-color.ts";
import { nameSwatch } from "../color/swatch-name.ts";
import type { ShownSwatch } from "./prepared-piece.ts";

/** What to call two swatches in one sentence: "teal blue", or their metals; told apart where they look different. */
export function namesApart(one: ShownSwatch, other: ShownSwatch): readonly [one: string, other: string] {
  return tellApart(nameSwatch(one.swatch), nameSwatch(other.swatch));
}

/** "teal": the one plain word, or its metal. */
export function plainWord({ swatch }: ShownSwatch): string {
  return swatch.finish ?? everydayTerm(swatch.oklab);
}
