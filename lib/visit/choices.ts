import { CLOTH_COLORS } from "../closet/cloth-colors.ts";
import type { Oklab } from "../color/oklab.ts";
import type { Palette } from "../sample/palette.ts";

/** A colour to choose where the shown one is wrong. */
export interface Choice {
  readonly name: string;
  readonly oklab: Oklab;
}

/** What the picture itself holds first, then cloth of every common colour. */
export function choicesOf({ swatches }: Palette, names: readonly string[]): readonly Choice[] {
  const seen = swatches.map(({ oklab }, index) => ({
    oklab,
    name: `${names[index] ?? "this"}, from the picture`,
  }));
  const common = Object.entries(CLOTH_COLORS).map(([name, oklab]) => ({ name, oklab }));
  return [...seen, ...common];
}
