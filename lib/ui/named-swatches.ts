import { swatchNames } from "../color/swatch-name.ts";
import type { NamedSwatch } from "../link/messages.ts";
import type { Swatch } from "../sample/palette.ts";

/** The swatches with the names that stand beside them; a metal is named as the person called it. */
export function namedSwatches(swatches: readonly Swatch[]): readonly NamedSwatch[] {
  const names = swatchNames(swatches);
  return swatches.map((swatch, at) => ({ ...swatch, name: names[at] ?? "" }));
}

/** The names in order, each once: "navy, white and red". */
export function namesText(swatches: readonly NamedSwatch[]): string {
  const names = [...new Set(swatches.map((swatch) => swatch.name))];
  const last = names.at(-1) ?? "no colour";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}
