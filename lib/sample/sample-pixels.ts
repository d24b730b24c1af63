import { readColorTerms } from "../words/read-words.ts";
import type { Slot } from "../words/slot.ts";
import { type Contender, chooseSwatches } from "./choose-swatches.ts";
import { aOf, bOf, lightnessOf } from "./color-bins.ts";
import { confidenceOf } from "./confidence-of.ts";
import { findShades } from "./find-shades.ts";
import type { Evidence, Palette, Swatch } from "./palette.ts";
import { readPicture } from "./picture.ts";
import type { Backing } from "./rank-shades.ts";
import { saidMetal } from "./said-metal.ts";
import { isFigure, placeOfSlot } from "./slot-place.ts";
import { bestFit, isUnlikeBodies } from "./term-region.ts";
import { cloth, weighCloth } from "./weigh-cloth.ts";

/** What the page says beside the picture. `text`: title and colour words, in any language. */
export interface SampleHints {
  readonly slot: Slot | null;
  readonly text: string;
}

/** Pixels. A picture with a shorter side shows no cloth that could be told from its border. */
const SHORTEST_SIDE = 8;
/** Share of the picture. Less opaque or less cloth than this is nothing to read. */
const LEAST_CLOTH = 0.005;
/** Fit of the first swatch with the page's words from which they count as evidence for it. */
const SAID = 0.5;
/** Log odds that a pixel gains when the page names its colour: one can be found by words, not invented. */
const WORD_ODDS = 1.2;

/** Part of the usual share that jewellery on somebody takes: beads are a fiftieth of what is seen, and less. Our estimate. */
const SMALL = 0.2;

/** A picture as it was read: its palette, and all colours that contended for its first swatch. */
export interface View {
  readonly palette: Palette;
  readonly contenders: readonly Contender[];
}

/**
 * The colours of the piece in a picture. Same pixels, same answer.
 * @param data RGBA, four bytes a pixel, row by row.
 * @throws RangeError when the sizes are no whole numbers from 0 or do not fit the data.
 */
export function samplePixels(
  data: Uint8ClampedArray,
  width: number,
  height: number,
  hints: SampleHints = { slot: null, text: "" },
): Palette {
  return readView(data, width, height, hints, null).palette;
}

/**
 * The same with its contenders.
 * @param backing what other photos of the piece say of its colours. @throws as `samplePixels` does
 */
export function readView(
  data: Uint8ClampedArray,
  width: number,
  height: number,
  hints: SampleHints,
  backing: Backing | null,
): View {
  if (!Number.isInteger(width) || !Number.isInteger(height) || width < 0 || height < 0) {
    throw new RangeError(`A picture cannot be ${width} × ${height} pixels.`);
  }
  if (data.length !== width * height * 4) {
    throw new RangeError(`${width} × ${height} pixels need ${width * height * 4} bytes, not ${data.length}.`);
  }
  if (!data.length) return unread("The picture is empty.");
  if (Math.min(width, height) < SHORTEST_SIDE) return unread("The picture is too small to read.");
  const picture = readPicture(data, width, height);
  if (picture.opaque < LEAST_CLOTH * picture.count) return unread("The picture is transparent.");
  const terms = readColorTerms(hints.text);
  const wordOdds = (k: number): number =>
    WORD_ODDS * bestFit(terms, lightnessOf(k) / 100, aOf(k) / 100, bOf(k) / 100);
  weighCloth(picture.sketch, terms.length ? wordOdds : null);
  const figure = isFigure(picture.sketch, cloth);
  const place = placeOfSlot(picture.sketch, figure ? hints.slot : null);
  // Gold and pearls on somebody look like skin, hair and blouses: words cannot find those.
  const small = figure && hints.slot === "jewellery" && terms.length > 0 && terms.every(isUnlikeBodies);
  const part = small ? SMALL : 1;
  const shades = findShades(picture, place, part);
  const scene = { figure, slot: hints.slot, part, terms, backing };
  const chosen = chooseSwatches(picture.sketch, cloth, shades, scene);
  const mass = chosen ? chosen.colors.reduce((sum, color) => sum + color.mass, 0) : 0;
  if (!chosen || mass < LEAST_CLOTH * picture.count) return unread("Nothing stands out from the background.");
  const evidence: Evidence[] = ["pixels"];
  if ((chosen.standing.said ?? 0) > SAID) evidence.push("words");
  if (figure && hints.slot) evidence.push("slot");
  const swatches = chosen.colors.map(({ l, a, b, mass: own }): Swatch => {
    const oklab = [l / 100, a / 100, b / 100] as const;
    const finish = saidMetal(terms, oklab);
    return { oklab, share: own / mass, ...(finish && { finish }) };
  });
  const confidence = confidenceOf(chosen.standing);
  return { palette: { swatches, confidence, evidence }, contenders: chosen.contenders };
}

function unread(reason: string): View {
  return { palette: { swatches: [], confidence: 0, evidence: [], reason }, contenders: [] };
}
