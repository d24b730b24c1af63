import "../theme.css";
import "./closet-page.css";
import { useState } from "preact/hooks";
import type { Piece, Wish } from "../../closet/piece.ts";
import { ToastStack } from "../toast-stack.tsx";
import { useToasts } from "../use-toasts.ts";
import type { ClosetTools } from "./closet-tools.ts";
import { ClosetView } from "./closet-view.tsx";
import { EmptyCloset } from "./empty-closet.tsx";
import { EyesPanel } from "./eyes-panel.tsx";
import { FilePanel } from "./file-panel.tsx";
import { PageHeader } from "./page-header.tsx";
import { type OpenSheet, PageSheet } from "./page-sheet.tsx";
import { PhotoTruth } from "./photo-truth.tsx";
import { useActions } from "./use-actions.ts";
import { useCloset } from "./use-closet.ts";
import { useView } from "./use-view.ts";
import { WishView } from "./wish-view.tsx";

/** The closet page: what hangs in the closet, what is wished for, and every way to change either. */
export function ClosetPage({ tools }: { tools: ClosetTools }) {
  const view = useView();
  const { toasts, say, dismiss } = useToasts();
  const { pieces, wishes, vision, trouble, reload } = useCloset(tools.closet);
  const actions = useActions(tools, reload, say);
  const [sheet, setSheet] = useState<OpenSheet | null>(null);
  const openAdd = () => setSheet({ kind: "add" });
  const openPhotos = () => setSheet({ kind: "photos" });
  const own = (wish: Wish) => {
    const { slot, palette, title, picture } = wish;
    if (slot === null || palette.swatches.length === 0) return setSheet({ kind: "own", wish });
    void actions.ownWish(wish, {
      name: title,
      slot,
      swatches: palette.swatches,
      ...(picture && { picture }),
    });
  };
  return (
    <div class="page">
      <PageHeader
        view={view}
        pieces={pieces?.length ?? 0}
        wishes={wishes?.length ?? 0}
        onAdd={openAdd}
        onPhotos={openPhotos}
      />
      <main class="page-main" tabIndex={-1}>
        {trouble && (
          <p class="alert" role="alert">
            {trouble} Reload the page; if that does not help, restart the browser.
          </p>
        )}
        {view === "closet" && pieces && pieces.length > 0 && (
          <ClosetView
            pieces={pieces}
            vision={vision}
            onEdit={(piece: Piece) => setSheet({ kind: "edit", piece })}
            onRemove={(piece: Piece) => void actions.removePiece(piece)}
          />
        )}
        {view === "closet" && pieces?.length === 0 && (
          <EmptyCloset now={tools.now} onKeep={actions.putPieces} onAdd={openAdd} onPhotos={openPhotos} />
        )}
        {view === "wishlist" && wishes && pieces && (
          <WishView
            wishes={wishes}
            pieces={pieces}
            ask={tools.ask}
            onOwn={own}
            onRemove={actions.removeWish}
          />
        )}
        {pieces === null && !trouble && <p class="soft">Opening the closet</p>}
      </main>
      <footer class="page-footer">
        <PhotoTruth />
        {pieces && <EyesPanel vision={vision} onSay={actions.putVision} />}
        <FilePanel actions={actions} />
      </footer>
      {sheet && <PageSheet sheet={sheet} tools={tools} actions={actions} onClose={() => setSheet(null)} />}
      <ToastStack toasts={toasts} dismiss={dismiss} />
    </div>
  );
}
