import "./wish-view.css";
import type { Piece, Wish } from "../../closet/piece.ts";
import type { AskWorker } from "../../link/messages.ts";
import { Button } from "../button.tsx";
import { countOf } from "../words.ts";
import { useVerdicts } from "./use-verdicts.ts";
import { WishCard } from "./wish-card.tsx";

export interface WishViewProps {
  readonly wishes: readonly Wish[];
  readonly pieces: readonly Piece[];
  readonly ask: AskWorker;
  readonly onOwn: (wish: Wish) => void;
  readonly onRemove: (wish: Wish) => void;
}

/** Saved products and what each would do for the closet today. */
export function WishView({ wishes, pieces, ask, onOwn, onRemove }: WishViewProps) {
  const { byId, trouble, again } = useVerdicts(ask, wishes, pieces);
  if (wishes.length === 0) {
    return (
      <section class="empty">
        <h2>Nothing on the wishlist yet</h2>
        <p>
          On a store page that is switched on, open a product's badge and choose “Save to wishlist”. It waits
          here with its price, its colours and what it would do for your closet.
        </p>
      </section>
    );
  }
  return (
    <section class="wishes" aria-labelledby="wishes-title">
      <h2 id="wishes-title">{countOf(wishes.length, "wish", "wishes")}</h2>
      {trouble && (
        <div class="alert wish-trouble" role="alert">
          <p>The wishes could not be compared with your closet. {trouble}</p>
          <Button onClick={again}>Compare again</Button>
        </div>
      )}
      <ul class="wish-list">
        {wishes.map((wish) => (
          <WishCard
            key={wish.id}
            wish={wish}
            explained={byId?.get(wish.id) ?? null}
            waiting={byId === null && trouble === ""}
            onOwn={onOwn}
            onRemove={onRemove}
          />
        ))}
      </ul>
    </section>
  );
}
