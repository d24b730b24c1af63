import type { Palette } from "../sample/palette.ts";
import { SURE_FROM } from "./headline.ts";

const CLOSE_MATCH =
  "The colours come from the photo, not the cloth: light, retouching and your screen can shift them, so compare in daylight before you rely on so close a match.";

const UNSURE = "The colour is not certain in this picture; if it looks wrong, pick the right one.";

const ON_SCREEN =
  "The store keeps this picture’s file to itself, so its colours were read as your screen shows them; they may be off.";

/**
 * What the picture cannot know, where it matters: for a shade taken from pixels that is said to be the same, for an answer
 * the sampler is not sure of, or for one from the screen. Null where a person named the colour or nothing hangs on it.
 */
export function cautionOf({ confidence, evidence }: Palette, closeMatch: boolean): string | null {
  if (evidence.includes("person")) return null;
  if (evidence.includes("screen")) return ON_SCREEN;
  if (confidence < SURE_FROM) return UNSURE;
  return closeMatch ? CLOSE_MATCH : null;
}
