import "./relation-list.css";
import { useState } from "preact/hooks";
import type { PieceFit } from "../fit/verdict.ts";
import type { NamedSwatch, PieceView } from "../link/messages.ts";
import { Button } from "./button.tsx";
import { Cloth } from "./cloth.tsx";
import { Dial } from "./dial.tsx";
import { namesText } from "./named-swatches.ts";
import { LOOK_ALIKE, relationText } from "./words.ts";

export interface RelationListProps {
  /** The product's swatches. */
  readonly candidate: readonly NamedSwatch[];
  /** Best first, as the verdict has them. */
  readonly fits: readonly PieceFit[];
  /** Every piece the fits mention. */
  readonly pieces: Readonly<Record<string, PieceView>>;
  /** Show this many at first and offer the rest behind a button. */
  readonly limit?: number;
  /** Also say why, in a sentence under each piece. */
  readonly why?: boolean;
}

/** The owned pieces a product goes with: cloth, name, and the relation as a dial with its word. */
export function RelationList({ candidate, fits, pieces, limit = 6, why = false }: RelationListProps) {
  const [open, setOpen] = useState(false);
  const shown = open ? fits : fits.slice(0, limit);
  return (
    <div class="relations">
      <ul class="relation-rows">
        {shown.map((fit) => (
          <RelationRow
            key={fit.pieceId}
            fit={fit}
            piece={pieces[fit.pieceId]}
            candidate={candidate}
            why={why}
          />
        ))}
      </ul>
      {fits.length > limit && (
        <Button kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? "Show fewer" : `Show all ${fits.length}`}
        </Button>
      )}
    </div>
  );
}

function RelationRow({
  fit,
  piece,
  candidate,
  why,
}: {
  fit: PieceFit;
  piece: PieceView | undefined;
  candidate: readonly NamedSwatch[];
  why: boolean;
}) {
  const first = candidate[fit.pair[0]];
  const second = piece?.swatches[fit.pair[1]];
  if (!piece || !first || !second) return null;
  return (
    <li class="relation-row">
      <Dial first={first.oklab} second={second.oklab} />
      <Cloth swatches={piece.swatches} size="chip" />
      <span class="relation-words">
        <span>
          {piece.name} <span class="soft small">{namesText(piece.swatches)}</span>
        </span>
        <span class="small">{relationText(fit.relation, fit.alternatives)}</span>
        {fit.lookAlike && <span class="small">{LOOK_ALIKE}</span>}
        {why && <span class="soft small">{fit.why}</span>}
      </span>
    </li>
  );
}
