/** Why a picture cannot be read; the message is a plain sentence that a person may see. */
export class PictureError extends Error {
  override readonly name = "PictureError";
}

/** The reasons there are, as they are shown. */
export const REASONS = {
  refused: "The store does not let this picture be read.",
  broken: "The picture did not load.",
  format: "This kind of picture cannot be read.",
  small: "The picture is too small to judge its colours.",
  large: "The picture is too large to read.",
  slow: "The picture took too long to load.",
} as const;
