import type { Piece, Wish } from "../closet/piece.ts";
import type { Candidate, Verdict } from "../fit/verdict.ts";
import type { PageKind, Price, ProductRole } from "../page/product.ts";
import type { Pixels } from "../pixels/pixels.ts";
import type { Part } from "../pixels/pixels-of-snapshot.ts";
import type { Palette, Swatch } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";

/** A swatch with the everyday name that always stands beside it. */
export interface NamedSwatch extends Swatch {
  readonly name: string;
}

/** As much of a piece as a card shows. */
export interface PieceView {
  readonly id: string;
  readonly name: string;
  readonly slot: Slot;
  readonly swatches: readonly NamedSwatch[];
}

/** What a badge needs: nothing of the closet beyond its own few words. */
export interface VerdictBrief {
  readonly key: string;
  readonly headline: string;
  readonly kind: Verdict["kind"];
  /** Pieces and looks the headline counts; shown as the number on the badge. 0 where there is nothing to count. */
  readonly count: number;
  /** Everyday names of the candidate's swatches, same order. */
  readonly names: readonly string[];
}

/** A whole verdict with the pieces it names, for a card or the popup. */
export interface ExplainedVerdict {
  readonly key: string;
  readonly names: readonly string[];
  readonly verdict: Verdict;
  /** Every piece that the verdict mentions, by id. */
  readonly pieces: Readonly<Record<string, PieceView>>;
  /** True when the product is on the wishlist already. */
  readonly wished: boolean;
}

/** What a card sends to be kept. */
export interface KeepRequest {
  readonly candidate: Candidate;
  readonly price: Price | null;
  readonly link: string | null;
  readonly pageUrl: string;
  /** Address of the picture, for a thumbnail, or a ready data: URL. */
  readonly picture: string | null;
}

/** One product in the popup's list and in a page scan. */
export interface SummaryProduct {
  readonly candidate: Candidate;
  readonly role: ProductRole;
  readonly price: Price | null;
  readonly image: string | null;
  readonly link: string | null;
  /** Null while its picture is being read or waits to be seen. */
  readonly brief: VerdictBrief | null;
}

/** A page at a glance, sent by the page script whenever it changes. */
export interface PageSummary {
  readonly url: string;
  readonly kind: PageKind;
  readonly state: "finding" | "reading" | "done";
  readonly products: readonly SummaryProduct[];
  /** Milliseconds since the page script started: products found, first badge, last badge; null until then. */
  readonly timings: {
    readonly found: number | null;
    readonly firstBadge: number | null;
    readonly lastBadge: number | null;
  };
}

/** A product's words about where it is worn, as the page has them. */
export interface KnownWords {
  readonly key: string;
  readonly slotTexts: readonly string[];
  readonly language: string;
}

/** The parts of the page script that come when they are needed. */
export const PART_NAMES = ["show", "card"] as const;
export type PartName = (typeof PART_NAMES)[number];

/**
 * Requests to the background worker. Those in `PAGE_REQUESTS` may come from the script on a store page; all may come
 * from the extension's own pages.
 */
export interface WorkerRequests {
  /** What is known of these products and pictures already: where each is worn by its words, and what was read or said. */
  recall: {
    request: { readonly products: readonly KnownWords[]; readonly pictures: readonly string[] };
    reply: {
      /** By product key. */
      readonly slots: Readonly<Record<string, Slot | null>>;
      readonly corrections: Readonly<Record<string, readonly Swatch[]>>;
      readonly palettes: Readonly<Record<string, Palette>>;
    };
  };
  /** Keep palettes that were read, by picture address. */
  remember: {
    request: { readonly entries: readonly { readonly picture: string; readonly palette: Palette }[] };
    reply: null;
  };
  /**
   * Sample pixels that the page's script could read; squeezed, `SAMPLE_SIDE` a side. `others`: of further photos of the
   * same product, at most three.
   */
  samplePicture: {
    request: {
      readonly pixels: Pixels;
      readonly others: readonly Pixels[];
      readonly slot: Slot | null;
      readonly text: string;
    };
    reply: Palette;
  };
  /** Read and sample a picture that the page itself may not read. */
  readPicture: {
    request: { readonly url: string; readonly slot: Slot | null; readonly text: string };
    reply: Palette;
  };
  judge: { request: { readonly candidates: readonly Candidate[] }; reply: readonly VerdictBrief[] };
  explain: { request: { readonly candidates: readonly Candidate[] }; reply: readonly ExplainedVerdict[] };
  saveWish: { request: KeepRequest; reply: { readonly id: Wish["id"] } };
  dropWish: { request: { readonly id: Wish["id"] }; reply: null };
  ownPiece: { request: KeepRequest; reply: { readonly id: Piece["id"] } };
  /** A person's word on a product's colour; no swatches: forget it. */
  correct: { request: { readonly productKey: string; readonly swatches: readonly Swatch[] }; reply: null };
  /** Put a part of the page script into the page that asks. */
  bringPart: { request: { readonly name: PartName }; reply: null };
  /** Switch a store off: stop its scripts and give its grant back. `origin`: "https://host", without a port. */
  switchOff: { request: { readonly origin: string }; reply: null };
}

export type WorkerRequestName = keyof WorkerRequests;

export const PAGE_REQUESTS = [
  "recall",
  "remember",
  "samplePicture",
  "readPicture",
  "judge",
  "explain",
  "saveWish",
  "dropWish",
  "ownPiece",
  "correct",
  "bringPart",
] as const satisfies readonly WorkerRequestName[];

/** The function a context uses to ask the worker; rejects with a plain sentence when no valid answer came. */
export type AskWorker = <N extends WorkerRequestName>(
  name: N,
  request: WorkerRequests[N]["request"],
) => Promise<WorkerRequests[N]["reply"]>;

/** One-way word to the scripts on pages: whoever reads this origin ("https://host"), leave no trace. */
export interface StopPage {
  readonly to: "page";
  readonly stop: string;
}

/** Name of the port on which a page script sends its `PageSummary` to the popup. */
export const SUMMARY_PORT = "page-summary";

/** A picture in plain sight that can be read in no other way than from the screen, with what helps to read it. */
export interface ScreenView {
  /** Where it is in the viewport. */
  readonly box: Part;
  readonly slot: Slot | null;
  readonly text: string;
}

/** Pictures read from one snapshot, at most: more than a screen shows of a size to be read (our choice). */
export const VIEWS_MOST = 100;

/** What the popup says to a page that holds still: the snapshot is taken; later, what each view shows, in their order. */
export type SnapshotWord = "taken" | readonly Palette[];

/** Name of the port on which the popup has a page hold still: the page sends `ScreenView`s, the popup `SnapshotWord`s. */
export const SNAPSHOT_PORT = "snapshot";
