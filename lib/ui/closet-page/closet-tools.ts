import type { Closet } from "../../closet/closet.ts";
import type { AskWorker } from "../../link/messages.ts";
import type { Palette } from "../../sample/palette.ts";

/** A photo as read: its colours and a small picture to keep (data: URL). */
export interface SampledPhoto {
  readonly palette: Palette;
  readonly picture: string;
}

/** Everything the closet page needs from outside. */
export interface ClosetTools {
  readonly closet: Closet;
  readonly ask: AskWorker;
  /** Rejects with a plain sentence where the file is no picture. */
  readonly samplePhoto: (file: File) => Promise<SampledPhoto>;
  /** Offers a text to be saved as a file. */
  readonly saveText: (fileName: string, text: string) => void;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** An id nothing else has. */
  readonly newId: () => string;
}
