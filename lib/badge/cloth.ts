import type { ClothColor } from "./badge-model.ts";
import { make } from "./make.ts";

/** A piece of cloth with a pinked edge, shares as widths; drawn only, its names stand beside it. */
export function makeCloth(colors: readonly ClothColor[], className = ""): HTMLElement {
  const face = make("span", "face");
  for (const { css, share } of colors) {
    const part = make("span", "part");
    part.style.background = css;
    part.style.flexGrow = String(100 * share);
    face.append(part);
  }
  const cloth = make("span", `cloth ${className}`, face);
  cloth.ariaHidden = "true";
  return cloth;
}

/** "crimson and cream", each name once. */
export function namesOf(colors: readonly ClothColor[]): string {
  const names = [...new Set(colors.map(({ name }) => name))];
  const last = names.pop() ?? "";
  return names.length ? `${names.join(", ")} and ${last}` : last;
}
