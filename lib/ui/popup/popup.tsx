import "../theme.css";
import "./popup.css";
import { useEffect, useRef } from "preact/hooks";
import { Button } from "../button.tsx";
import { PageList } from "./page-list.tsx";
import { hostOf } from "./pick-image-origins.ts";
import type { PopupBrowser } from "./popup-browser.ts";
import { popupState } from "./popup-state.ts";
import { StateHead } from "./state-head.tsx";
import { StoreStrip } from "./store-strip.tsx";
import { SwitchOn } from "./switch-on.tsx";
import { UnreadList } from "./unread-list.tsx";
import { usePopup } from "./use-popup.ts";

/** The window under the toolbar button: this page at a glance, and whether this store is read at all. */
export function Popup({ browser }: { browser: PopupBrowser }) {
  const { facts, actions } = usePopup(browser);
  const state = popupState(facts);
  const main = useRef<HTMLElement>(null);
  const lastKind = useRef(state.kind);
  useEffect(() => {
    const button = document.activeElement;
    const changed = lastKind.current !== state.kind;
    lastKind.current = state.kind;
    // A button that was pressed goes with its screen; keyboards and screen readers go on from the new heading.
    if (changed && (!button || button === document.body)) main.current?.querySelector("h1")?.focus();
  }, [state.kind]);

  const host = facts.origin === null ? "" : hostOf(facts.origin);
  const products = facts.summary?.products ?? [];
  const lists = state.kind === "reading" || state.kind === "results" || state.kind === "closet-empty";
  return (
    <div class="popup">
      <header class="popup-head">
        <p class="popup-name">Hueward</p>
        <Button kind="quiet" onClick={() => browser.openCloset()}>
          Open your closet
        </Button>
      </header>
      {actions && facts.origin !== null && <StoreStrip facts={facts} host={host} actions={actions} />}
      {facts.problem !== null && (
        <div class="popup-problem" role="alert">
          <p>{facts.problem}</p>
          <Button kind="quiet" onClick={() => void actions?.lookAgain()}>
            Try again
          </Button>
        </div>
      )}
      <main ref={main}>
        <StateHead state={state} facts={facts} host={host} actions={actions} />
        {actions && state.kind === "ready" && (
          <SwitchOn host={host} imageOrigins={facts.imageOrigins} actions={actions} once />
        )}
        {actions && lists && (
          <PageList
            products={products}
            explained={facts.explained}
            reading={state.busy}
            onWish={actions.toggleWish}
          />
        )}
        {actions && lists && <UnreadList facts={facts} actions={actions} />}
      </main>
    </div>
  );
}
