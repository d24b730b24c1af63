import { useEffect, useState } from "preact/hooks";
import { openSession, type PopupActions } from "./open-session.ts";
import type { PopupBrowser } from "./popup-browser.ts";
import { NOTHING_KNOWN, type PopupFacts } from "./popup-state.ts";

/** What is known and what can be done, for as long as the popup is on the screen; `actions` is null until it is up. */
export function usePopup(browser: PopupBrowser): { facts: PopupFacts; actions: PopupActions | null } {
  const [facts, setFacts] = useState(NOTHING_KNOWN);
  const [actions, setActions] = useState<PopupActions | null>(null);
  useEffect(() => {
    const life = new AbortController();
    setActions(openSession(browser, setFacts, life.signal));
    return () => life.abort();
  }, [browser]);
  return { facts, actions };
}
