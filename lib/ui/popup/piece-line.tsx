import type { ComponentChildren } from "preact";
import type { PieceView } from "../../link/messages.ts";
import { Cloth } from "../cloth.tsx";
import { namesText } from "../named-swatches.ts";

/** An owned piece in one line: a dial where there is one, its cloth, its name and colours, and a note. */
export function PieceLine({
  piece,
  dial,
  note,
}: {
  piece: PieceView;
  dial?: ComponentChildren;
  note?: string | undefined;
}) {
  return (
    <li class="piece">
      {dial}
      <Cloth swatches={piece.swatches} size="chip" />
      <span>
        {piece.name}{" "}
        <span class="soft">
          {namesText(piece.swatches)}
          {note && `; ${note}`}
        </span>
      </span>
    </li>
  );
}
