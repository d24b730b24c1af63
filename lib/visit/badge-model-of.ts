import type { BadgeModel } from "../badge/badge-model.ts";
import { cssOf } from "../color/convert.ts";
import type { Palette } from "../sample/palette.ts";
import type { Tracked } from "./tracked.ts";

/** What the badge of a product shows now. */
export function badgeModelOf({
  product,
  palette,
  brief,
}: Pick<Tracked, "product" | "palette" | "brief">): BadgeModel {
  const { title } = product;
  if (!palette || !brief)
    return { state: "reading", words: "Reading the picture", count: 0, cloth: [], title, note: "" };
  return {
    title,
    state: palette.swatches.length ? "ready" : "unreadable",
    words: brief.headline,
    count: brief.count,
    cloth: clothOf(palette, brief.names),
    note: palette.reason ?? "",
  };
}

/** Swatches as they are drawn, with the names that stand beside them. */
export function clothOf({ swatches }: Pick<Palette, "swatches">, names: readonly string[]) {
  return swatches.map(({ oklab, share }, index) => ({ css: cssOf(oklab), share, name: names[index] ?? "" }));
}
