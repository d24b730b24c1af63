import type { AskWorker, SnapshotWord } from "../../link/messages.ts";
import type { Pixels } from "../../pixels/pixels.ts";
import type { Part } from "../../pixels/pixels-of-snapshot.ts";

/** The tab that the popup speaks about. `url` is null where the browser keeps it to itself. */
export interface ShownTab {
  readonly id: number;
  readonly url: string | null;
}

/** What a switched-on store was granted beside its own host: the origins its pictures come from. */
export interface StoreGrant {
  readonly imageOrigins: readonly string[];
}

/** The popup's end of the line to a page script. */
export interface SummaryLine {
  /** What the page script sent, unchecked. */
  summary(message: unknown): void;
  /** The page script is not there, or no longer. */
  closed(): void;
}

/** A page that holds still for a snapshot, for as long as the popup is open or until it was told that it is taken. */
export interface StillPage {
  /** The pictures it shows, unchecked. */
  readonly views: unknown;
  say(word: SnapshotWord): void;
}

/**
 * As much of the browser as the popup needs; injected, so that its logic runs in a plain test. An origin is
 * "https://host", without a port.
 */
export interface PopupBrowser {
  shownTab(): Promise<ShownTab | null>;
  /** Calls `listener` each time a page has loaded in the tab. */
  onTabLoaded(tabId: number, listener: () => void, signal: AbortSignal): void;
  /** Runs `imageOriginsOnPage` in the tab and hands back its result, unchecked; rejects where the browser forbids it. */
  imageOrigins(tabId: number): Promise<unknown>;
  /** Null for a store that is off. */
  storeGrant(origin: string): Promise<StoreGrant | null>;
  /** Asks the person for these origins; only within a click. True when granted. */
  requestOrigins(origins: readonly string[]): Promise<boolean>;
  /** Notes which store the person asked for, beside the question itself: the popup may close under that. */
  intendStore(origin: string, imageOrigins: readonly string[]): Promise<void>;
  /** Starts the page script in this tab, once, without any grant. */
  runOnce(tabId: number): Promise<void>;
  reloadTab(tabId: number): Promise<void>;
  /** Opens the line to the page script; the function it returns hangs up without calling `closed`. */
  connect(tabId: number, line: SummaryLine): () => void;
  /** Asks the page script what a snapshot is to show; resolves once the page is ready for it. */
  holdStill(tabId: number): Promise<StillPage>;
  /** A picture of what the tab shows, which the person's press on the toolbar button allows. */
  snapshot(): Promise<Blob>;
  /** Pixels of parts of such a picture, squeezed as pictures are to be sampled. */
  pixelsIn(snapshot: Blob, parts: readonly Part[]): Promise<readonly Pixels[]>;
  /** How many pieces hang in the closet. */
  closetSize(): Promise<number>;
  onClosetChange(listener: () => void, signal: AbortSignal): void;
  /** Opens the closet page, which offers its quick start while the closet is empty. */
  openCloset(): void;
  readonly ask: AskWorker;
}
