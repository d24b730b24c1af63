import "./piece-card.css";
import { useCallback, useContext, useMemo } from "preact/hooks";
import type { Piece } from "../../closet/piece.ts";
import { Button } from "../button.tsx";
import { Cloth } from "../cloth.tsx";
import { namesText } from "../named-swatches.ts";
import { SLOT_WORDS } from "../words.ts";
import type { HungPiece } from "./hung-piece.ts";
import { SpotlightContext, useSpotlight } from "./spotlight.ts";

export interface PieceCardProps {
  readonly hung: HungPiece;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
  readonly onEdit: (piece: Piece) => void;
  readonly onRemove: (piece: Piece) => void;
}

/** A piece as cloth with its name. Choosing it offers what can be done with it. One choice redraws two cards of hundreds. */
export function PieceCard({ hung, selected, onSelect, onEdit, onRemove }: PieceCardProps) {
  const { piece } = hung;
  const light = useContext(SpotlightContext);
  const lit = useSpotlight(useCallback((id) => id === piece.id, [piece.id]));
  const face = useMemo(
    () => <PieceFace hung={hung} selected={selected} onSelect={onSelect} />,
    [hung, selected, onSelect],
  );
  return (
    <li
      class={`piece-card${lit ? " lit" : ""}${selected ? " selected" : ""}`}
      onPointerEnter={() => light.shine(piece.id)}
      onPointerLeave={() => light.shine(null)}
      onFocusIn={() => light.shine(piece.id)}
      onFocusOut={() => light.shine(null)}
    >
      {face}
      {selected && (
        <div class="piece-actions">
          <Button kind="quiet" onClick={() => onEdit(piece)} aria-label={`Edit ${piece.name}`}>
            Edit
          </Button>
          <Button kind="quiet" onClick={() => onRemove(piece)} aria-label={`Remove ${piece.name}`}>
            Remove
          </Button>
          <a class="piece-to-wheel small" href="#goes-with">
            What goes with it
          </a>
        </div>
      )}
    </li>
  );
}

function PieceFace({ hung, selected, onSelect }: Pick<PieceCardProps, "hung" | "selected" | "onSelect">) {
  const { piece, named } = hung;
  return (
    <button type="button" class="piece-face" aria-pressed={selected} onClick={() => onSelect(piece.id)}>
      <Cloth swatches={named} size="bolt" />
      <span class="piece-text">
        {piece.picture && (
          <img class="piece-picture" src={piece.picture} alt="" loading="lazy" decoding="async" />
        )}
        <span class="piece-words">
          <span class="piece-name">{piece.name}</span>
          <span class="soft small">{namesText(named)}</span>
          <span class="soft small">{SLOT_WORDS[piece.slot]}</span>
        </span>
      </span>
    </button>
  );
}
