import "./cloth.css";
import { cssOf } from "../color/convert.ts";
import type { NamedSwatch } from "../link/messages.ts";
import type { Swatch } from "../sample/palette.ts";
import { namesText } from "./named-swatches.ts";

/** `chip`: beside a line of text; `patch`: in a list of cloths; `band`: a row; `bolt`: the face of a card. */
export type ClothSize = "chip" | "patch" | "band" | "bolt";

/** Flex items whose growth sums to less than 1 leave room free; a hundredfold share never does. */
const GROWTH = 100;

/**
 * A piece of cloth with a pinked edge; shares are widths. Drawn only: its names must stand beside it as text,
 * so it is hidden from assistive technology.
 */
export function Cloth({ swatches, size = "band" }: { swatches: readonly Swatch[]; size?: ClothSize }) {
  return (
    <span class={`cloth cloth-${size}`} aria-hidden="true">
      <span class="cloth-face">
        {swatches.map((swatch, at) => (
          <span
            key={at}
            class="cloth-part"
            style={{ background: cssOf(swatch.oklab), flexGrow: swatch.share * GROWTH }}
          />
        ))}
      </span>
    </span>
  );
}

/** A piece of cloth with the names of its colours beside it. */
export function NamedCloth({
  swatches,
  size = "chip",
}: {
  swatches: readonly NamedSwatch[];
  size?: ClothSize;
}) {
  return (
    <span class="named-cloth">
      <Cloth swatches={swatches} size={size} />
      <span class="named-cloth-names">{namesText(swatches)}</span>
    </span>
  );
}
