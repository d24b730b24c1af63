import type { MainPage } from "./main-page.ts";
import type { Standing } from "./standing.ts";

/** A product page's own picture is at least this wide or high, in CSS pixels. */
const SMALLEST_MAIN = 140;
/** Pictures measured between two yields. */
const STRIDE = 50;

/** Pictures of a page that its own product may have. */
export interface OwnPictures {
  /** Large enough, and in no tile; those of a closed gallery among them. */
  readonly all: readonly Element[];
  /** Those that show, or all where none does. */
  readonly shown: readonly Element[];
  readonly isAnyVisible: boolean;
}

export function* ownPictures(
  { survey, context: { furniture } }: MainPage,
  { inTile }: Standing,
): Generator<undefined, OwnPictures, undefined> {
  const all: Element[] = [];
  const visible: Element[] = [];
  for (const [i, picture] of survey.pictures.entries()) {
    if (i % STRIDE === 0) yield;
    const { width, height } = picture.getBoundingClientRect();
    if ((width > 0 && Math.max(width, height) < SMALLEST_MAIN) || inTile(picture)) continue;
    all.push(picture);
    if (width > 0 || !furniture.isHidden(picture)) visible.push(picture);
  }
  return { all, shown: visible.length > 0 ? visible : all, isAnyVisible: visible.length > 0 };
}
