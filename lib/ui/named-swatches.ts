import { nameColor } from "../color/name-color.ts";
import type { Oklab } from "../color/oklab.ts";
import type { NamedSwatch } from "../link/messages.ts";
import type { Swatch } from "../sample/palette.ts";

/** Names kept at most; a name costs hundreds of colour differences, and one closet shows few hundred colours. */
const MOST_KEPT = 2000;

const kept = new Map<string, string>();

/** The everyday name of a colour, looked up once. */
export function everydayName(oklab: Oklab): string {
  const key = oklab.join();
  const known = kept.get(key);
  if (known !== undefined) return known;
  if (kept.size >= MOST_KEPT) kept.clear();
  const name = nameColor(oklab).everyday;
  kept.set(key, name);
  return name;
}

/** The swatches with the everyday names that stand beside them; a metal is named as the person called it. */
export function namedSwatches(swatches: readonly Swatch[]): readonly NamedSwatch[] {
  return swatches.map((swatch) => ({ ...swatch, name: swatch.finish ?? everydayName(swatch.oklab) }));
}

/** The same with names that are known already, as the worker sends them; a missing name is looked up. */
export function withNames(swatches: readonly Swatch[], names: readonly string[]): readonly NamedSwatch[] {
  return namedSwatches(swatches).map((swatch, at) => ({ ...swatch, name: names[at] ?? swatch.name }));
}

/** The names in order, each once: "navy, white and red". */
export function namesText(swatches: readonly NamedSwatch[]): string {
  const names = [...new Set(swatches.map((swatch) => swatch.name))];
  const last = names.at(-1) ?? "no colour";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}
