import "./product-row.css";
import { useId, useState } from "preact/hooks";
import type { ExplainedVerdict, SummaryProduct } from "../../link/messages.ts";
import { Button } from "../button.tsx";
import { Cloth } from "../cloth.tsx";
import { namedSwatches, namesText } from "../named-swatches.ts";
import { priceText } from "../price-text.ts";
import { glanceAt, groupFits } from "./group-fits.ts";
import { ProductReasons } from "./product-reasons.tsx";
import { isRepeat } from "./rank-products.ts";

/** Relations told in a closed row; the others wait in the open one. */
const GLANCES = 2;

/** One product: its cloth, what it would do for the closet, and, when opened, with which pieces. */
export function ProductRow({
  product,
  explained,
  onWish,
}: {
  product: SummaryProduct;
  explained: ExplainedVerdict | undefined;
  onWish: (product: SummaryProduct, wished: boolean) => void;
}) {
  const [open, setOpen] = useState(false);
  const reasons = useId();
  const { candidate, brief, price } = product;
  const swatches = namedSwatches(candidate.palette.swatches);
  const groups = explained ? groupFits(explained.verdict.pieces).slice(0, GLANCES) : [];
  const glances = groups.map((group) => glanceAt(group, explained?.pieces ?? {}));
  const wished = explained?.wished ?? false;
  const wish = wished ? "Take off wishlist" : "Save to wishlist";
  return (
    <li class={`row ${isRepeat(product) ? "row-repeat" : ""}`}>
      <div class="row-cloth">
        <Cloth swatches={swatches} size="band" />
        <span class="soft">{namesText(swatches)}</span>
      </div>
      <h2 class="row-title">
        <button
          type="button"
          class="row-open"
          aria-expanded={open}
          aria-controls={reasons}
          onClick={() => setOpen(!open)}
        >
          {candidate.title}
        </button>
      </h2>
      {/* That the closet is empty stands at the head of the screen once, not in every row. */}
      {brief?.kind !== "empty-closet" && <p class="row-headline">{brief?.headline}</p>}
      <div class="row-glances soft" hidden={open}>
        {glances.map(([best, more]) => (
          <p key={best}>
            <span>{best}</span>
            <span>{more}</span>
          </p>
        ))}
      </div>
      <div class="row-foot">
        <span>{price && priceText(price)}</span>
        {explained && (
          <Button
            kind="quiet"
            aria-label={`${wish}: ${candidate.title}`}
            onClick={() => onWish(product, !wished)}
          >
            {wish}
          </Button>
        )}
      </div>
      <div id={reasons} class="row-reasons" hidden={!open}>
        {open && <ProductReasons product={product} explained={explained} swatches={swatches} />}
      </div>
    </li>
  );
}
