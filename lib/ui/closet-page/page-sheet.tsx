import type { PieceDraft } from "../../closet/new-piece.ts";
import type { Piece, Wish } from "../../closet/piece.ts";
import type { ClosetTools } from "./closet-tools.ts";
import { PhotoDialog } from "./photo-dialog.tsx";
import { BLANK_DRAFT, PieceDialog } from "./piece-dialog.tsx";
import type { Actions } from "./use-actions.ts";

/** Which dialog is open, and on what. */
export type OpenSheet =
  | { readonly kind: "add" }
  | { readonly kind: "photos" }
  | { readonly kind: "edit"; readonly piece: Piece }
  | { readonly kind: "own"; readonly wish: Wish };

/** The dialog that is open. It closes at once when something is kept; the toast says how that went. */
export function PageSheet({
  sheet,
  tools,
  actions,
  onClose,
}: {
  sheet: OpenSheet;
  tools: ClosetTools;
  actions: Actions;
  onClose: () => void;
}) {
  const closing =
    <T,>(keep: (kept: T) => Promise<void>) =>
    (kept: T) => {
      onClose();
      void keep(kept);
    };
  switch (sheet.kind) {
    case "photos":
      return <PhotoDialog tools={tools} onClose={onClose} onKeep={closing(actions.addPieces)} />;
    case "add":
      return (
        <PieceDialog
          title="Add a piece"
          start={BLANK_DRAFT}
          keep="Put it in the closet"
          onClose={onClose}
          onKeep={closing((draft: PieceDraft) => actions.addPieces([draft]))}
        />
      );
    case "edit":
      return (
        <PieceDialog
          title={`Edit ${sheet.piece.name}`}
          start={sheet.piece}
          keep="Save the changes"
          onClose={onClose}
          onKeep={closing((draft: PieceDraft) => actions.editPiece(sheet.piece, draft))}
        />
      );
    case "own": {
      const { title, slot, palette, picture } = sheet.wish;
      const swatches = palette.swatches.length > 0 ? palette.swatches : BLANK_DRAFT.swatches;
      return (
        <PieceDialog
          title="Add it to the closet"
          start={{ name: title, slot, swatches, ...(picture && { picture }) }}
          keep="Put it in the closet"
          onClose={onClose}
          onKeep={closing((draft: PieceDraft) => actions.ownWish(sheet.wish, draft))}
        />
      );
    }
  }
}
