import { countOf } from "../words.ts";
import type { PopupState, Progress } from "./popup-state.ts";

/** What a person can do next from a screen. */
export type NextStep = "switch-on" | "read-page" | "start-closet";

/** A screen in words. */
export interface StateWords {
  readonly heading: string;
  /** One or two sentences; null where the heading says it all. */
  readonly text: string | null;
  readonly next: NextStep | null;
}

function progressText({ read, failed, total, busy }: Progress): string | null {
  if (busy) return total > 0 ? `${read} of ${total} read so far.` : null;
  const parts = [
    ...(read < total ? [`${read} of ${total} read; the others are read as you scroll to them.`] : []),
    ...(failed > 0 ? [`${failed} could not be read, listed last.`] : []),
  ];
  return parts.length > 0 ? parts.join(" ") : null;
}

/** What each screen says, and what it offers to do. `refused`: the browser keeps extensions off the page. */
export function sayState(state: PopupState, host: string, refused: boolean): StateWords {
  switch (state.kind) {
    case "opening":
      return { heading: "Looking at this page", text: null, next: null };
    case "not-a-web-page":
      return {
        heading: "Nothing to read here",
        text: refused
          ? "The browser keeps extensions off this page. Open a store’s page, then press the Hueward button again."
          : "This is not a store’s web page. Open one, then press the Hueward button again.",
        next: null,
      };
    case "ready":
      return {
        heading: `Read ${host} by colour`,
        text: "See on each product what it would match, complete or repeat in your closet.",
        next: "switch-on",
      };
    case "nothing-found":
      return {
        heading: "No products found on this page",
        text: "Open a listing or a product of this store. If this page is still loading, its products appear here by themselves.",
        next: null,
      };
    case "lost":
      return {
        heading: "This page does not answer",
        text: "It may have been reloaded. Read it again; if that does not help, reload it first.",
        next: "read-page",
      };
    case "closet-empty":
      return {
        heading: "Your closet is empty",
        text: "Hang a few pieces in it, and each product is compared with them. The quick start takes about two minutes and needs no photo.",
        next: "start-closet",
      };
    case "reading":
      return {
        heading: state.total > 0 ? `Reading ${countOf(state.total, "product")}` : "Looking for products",
        text: progressText(state),
        next: null,
      };
    case "results":
      return {
        heading: `${countOf(state.total, "product")}, best first`,
        text: progressText(state),
        next: null,
      };
  }
}
