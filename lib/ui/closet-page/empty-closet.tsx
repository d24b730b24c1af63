import type { Piece } from "../../closet/piece.ts";
import { Button } from "../button.tsx";
import { QuickStart } from "./quick-start.tsx";

/** What an empty closet offers: a quick start, or the other ways in. */
export function EmptyCloset({
  now,
  onKeep,
  onAdd,
  onPhotos,
}: {
  now: () => number;
  onKeep: (pieces: readonly Piece[]) => Promise<void>;
  onAdd: () => void;
  onPhotos: () => void;
}) {
  return (
    <section class="empty">
      <h2>Start with what most closets hold</h2>
      <p>
        Tick what you own and set the colours about right. That is enough for the badges on store pages to
        tell you what a product goes with; correct and add the rest in your own time. On a store page, “I own
        this” hangs a product here too.
      </p>
      <p class="empty-else">
        Or <Button onClick={onAdd}>add a piece by hand</Button>{" "}
        <Button onClick={onPhotos}>add from photos</Button>
      </p>
      <QuickStart now={now} onKeep={(pieces) => void onKeep(pieces)} />
    </section>
  );
}
