import type { Closet } from "../../closet/closet.ts";
import type { AskWorker } from "../../link/messages.ts";
import type { Palette } from "../../sample/palette.ts";

/** A photo as read: its colours and a small picture to keep (data: URL). */
export interface SampledPhoto {
  readonly palette: Palette;
  readonly picture: string;
}

/** A place in a picture: 0–1 from the left and from the top. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Everything the closet page needs from outside. */
export interface ClosetTools {
  readonly closet: Closet;
  readonly ask: AskWorker;
  /**
   * Reads a photo; with `white`, as if what lies there were white or grey. Rejects with a plain sentence where the file is no
   * picture or the place cannot serve.
   */
  readonly samplePhoto: (file: File, white?: Spot) => Promise<SampledPhoto>;
  /** Offers a text to be saved as a file. */
  readonly saveText: (fileName: string, text: string) => void;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** An id nothing else has. */
  readonly newId: () => string;
}
