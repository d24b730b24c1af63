import type { Context } from "../context.ts";
import { isPlain, within } from "../dom/ancestors.ts";
import { letters } from "../dom/letters.ts";
import { headingText } from "../dom/plain-text.ts";
import { readTag } from "../money/price.ts";
import type { Survey } from "../survey.ts";
import { isCommon, nameInHeading } from "./brands.ts";

/** Letters beside an amount in a heading from which on they may name the product. */
const SHORTEST_NAME = 4;

const HEADING = "h1,h2,h3,h4,h5,h6";

/** What the heading says that stands right before a tile, where those in the tile are prices or in others as well; else "". */
export function headBefore(tile: Element, survey: Survey, context: Context): string {
  const before = tile.previousElementSibling;
  // As a rule another tile stands there.
  if (!before || survey.picturesIn.has(before) || survey.pricesIn.has(before) || !isPlain(before)) return "";
  const inside = [...tile.querySelectorAll(HEADING)];
  if (inside.length === 0) return "";
  const isPrice = (heading: Element) =>
    survey.pricesIn.has(heading) && letters(readTag(headingText(heading)).words) < SHORTEST_NAME;
  const own = inside.filter((heading) => !isPrice(heading));
  const head = within(before, HEADING).find((heading) => !isCommon(heading, context));
  return head && own.every((heading) => isCommon(heading, context)) ? nameInHeading(head, context) : "";
}
