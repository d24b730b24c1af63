import type { ExplainedVerdict, PageSummary } from "../../link/messages.ts";
import type { ShownTab, StoreGrant } from "./popup-browser.ts";
import { isUnread } from "./rank-products.ts";

/** All that the popup knows; every screen follows from it. */
export interface PopupFacts {
  /** Undefined until the browser has said which tab it is. */
  readonly tab: ShownTab | null | undefined;
  /** "https://host" of the tab's page; null where it is not a web page. */
  readonly origin: string | null;
  /** The browser keeps extensions off this page. */
  readonly refused: boolean;
  /** Null while the store is off. */
  readonly grant: StoreGrant | null;
  /** Other hosts that serve pictures on this page, most pictures first. */
  readonly imageOrigins: readonly string[];
  /** `calling`: not known yet; `absent`: none runs here; `lost`: one did, and is gone. */
  readonly script: "calling" | "absent" | "running" | "lost";
  readonly summary: PageSummary | null;
  /** Null until it was counted. */
  readonly closetSize: number | null;
  /** Whole verdicts by product key, as far as they are in. */
  readonly explained: ReadonlyMap<string, ExplainedVerdict>;
  /** The last thing that went wrong, as a plain sentence. */
  readonly problem: string | null;
}

export const NOTHING_KNOWN: PopupFacts = {
  tab: undefined,
  origin: null,
  refused: false,
  grant: null,
  imageOrigins: [],
  script: "calling",
  summary: null,
  closetSize: null,
  explained: new Map(),
  problem: null,
};

/** How far the page script is: `read` of `total` products have an answer, `failed` of these have no colour. */
export interface Progress {
  readonly read: number;
  readonly failed: number;
  readonly total: number;
  readonly busy: boolean;
}

/** Which screen the popup shows. */
export type PopupState =
  | { readonly kind: "opening" }
  | { readonly kind: "not-a-web-page" }
  | { readonly kind: "ready" }
  | { readonly kind: "nothing-found" }
  | { readonly kind: "lost" }
  | ({ readonly kind: "reading" | "results" | "closet-empty" } & Progress);

/** How far a page is. */
export function progressOf(summary: PageSummary): Progress {
  const read = summary.products.filter(({ brief }) => brief !== null).length;
  const failed = summary.products.filter(isUnread).length;
  return { read, failed, total: summary.products.length, busy: summary.state !== "done" };
}

/** The one screen that fits what is known. */
export function popupState(facts: PopupFacts): PopupState {
  if (facts.tab === undefined) return { kind: "opening" };
  if (facts.origin === null || facts.refused) return { kind: "not-a-web-page" };
  if (facts.script === "lost") return { kind: "lost" };
  if (facts.script === "absent") return { kind: facts.grant ? "lost" : "ready" };
  if (!facts.summary) return { kind: "opening" };
  const progress = progressOf(facts.summary);
  if (progress.total === 0 && !progress.busy) return { kind: "nothing-found" };
  const knowsNoPiece = facts.summary.products.some(({ brief }) => brief?.kind === "empty-closet");
  if (facts.closetSize === 0 || (facts.closetSize === null && knowsNoPiece))
    return { kind: "closet-empty", ...progress };
  return { kind: progress.busy ? "reading" : "results", ...progress };
}
