import type { Wish } from "../../closet/piece.ts";
import type { ExplainedVerdict } from "../../link/messages.ts";
import { Button } from "../button.tsx";
import { Cloth } from "../cloth.tsx";
import { namedSwatches, namesText } from "../named-swatches.ts";
import { priceText } from "../price-text.ts";
import { WishVerdict } from "./wish-verdict.tsx";

export interface WishCardProps {
  readonly wish: Wish;
  readonly explained: ExplainedVerdict | null;
  /** The worker has not answered yet. */
  readonly waiting: boolean;
  readonly onOwn: (wish: Wish) => void;
  readonly onRemove: (wish: Wish) => void;
}

/** One saved product: picture, price, store, colours, and what it would do for the closet. */
export function WishCard({ wish, explained, waiting, onOwn, onRemove }: WishCardProps) {
  const named = namedSwatches(wish.palette.swatches);
  return (
    <li class={named.length > 0 ? "wish-card" : "wish-card wish-bare"}>
      {named.length > 0 && (
        <div class="wish-picture-place">
          {wish.picture && (
            <img class="wish-picture" src={wish.picture} alt="" loading="lazy" decoding="async" />
          )}
          <Cloth swatches={named} size="band" />
        </div>
      )}
      <div class="wish-words">
        <h3>{wish.title}</h3>
        <p>
          {wish.price && <strong>{priceText(wish.price)}</strong>}
          {wish.price && <span class="soft"> at </span>}
          <span class="soft">{wish.store}</span>
        </p>
        <p class="soft small">
          {named.length > 0
            ? namesText(named)
            : `${wish.palette.reason ?? "No colour could be read."} You choose its colours when you own it.`}
        </p>
        {explained && <WishVerdict explained={explained} candidate={named} />}
        {waiting && <p class="soft">Comparing with your closet</p>}
        <div class="wish-actions">
          {wish.link && (
            <a class="button button-plain" href={wish.link} target="_blank" rel="noopener noreferrer">
              Store page<span class="unseen"> of {wish.title}, in a new tab</span>
            </a>
          )}
          <Button onClick={() => onOwn(wish)} aria-label={`I own this now: ${wish.title}`}>
            I own this now
          </Button>
          <Button kind="quiet" onClick={() => onRemove(wish)} aria-label={`Remove ${wish.title}`}>
            Remove
          </Button>
        </div>
      </div>
    </li>
  );
}
