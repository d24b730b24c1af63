import type { Piece } from "../../lib/closet/piece.ts";
import { oklabFromRgb8 } from "../../lib/color/convert.ts";
import type { Rgb8 } from "../../lib/color/oklab.ts";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import type { ExplainedVerdict, SummaryProduct } from "../../lib/link/messages.ts";
import type { Palette, Swatch } from "../../lib/sample/palette.ts";
import type { Slot } from "../../lib/words/slot.ts";
import { briefOf, explained } from "../../lib/worker/verdict-views.ts";

/** Dyes of the invented store and closet; invented values. */
const DYES: Readonly<Record<string, Rgb8>> = {
  white: [246, 245, 240],
  black: [24, 23, 25],
  charcoal: [70, 72, 75],
  cream: [240, 229, 205],
  camel: [186, 140, 92],
  navy: [28, 38, 74],
  sky: [138, 182, 219],
  teal: [20, 110, 112],
  forest: [34, 82, 54],
  olive: [104, 104, 52],
  mustard: [208, 160, 40],
  rust: [172, 78, 40],
  tomato: [206, 52, 42],
  burgundy: [104, 22, 42],
  blush: [228, 178, 178],
  plum: [96, 44, 92],
};

const GARMENTS: readonly (readonly [name: string, slot: Slot | null])[] = [
  ["Pleated midi skirt with a side zip", "bottom"],
  ["Boxy linen shirt", "top"],
  ["Double-breasted wool coat with horn buttons and a half belt", "layer"],
  ["Knitted shift dress", "one-piece"],
  ["Ribbed tights", "legwear"],
  ["Suede ankle boots", "shoes"],
  ["Woven shopper", "bag"],
  ["Square scarf", "accessory"],
];

const dyed = (name: string, share = 1): Swatch => ({
  oklab: oklabFromRgb8(...(DYES[name] ?? [0, 0, 0])),
  share,
});

const piece = (name: string, slot: Slot, ...dyes: string[]): Piece => ({
  id: name,
  name,
  slot,
  swatches: dyes.map((dye, at) => dyed(dye, at === 0 ? 1 - 0.3 * (dyes.length - 1) : 0.3)),
  addedAt: 0,
});

const CLOSET: readonly Piece[] = [
  piece("Navy blazer", "layer", "navy"),
  piece("White Oxford shirt", "top", "white"),
  piece("Striped jersey top", "top", "white", "navy"),
  piece("Charcoal trousers", "bottom", "charcoal"),
  piece("Camel A-line skirt", "bottom", "camel"),
  piece("Forest roll-neck", "top", "forest"),
  piece("Rust cardigan", "layer", "rust"),
  piece("Black loafers", "shoes", "black"),
  piece("Burgundy belt bag", "bag", "burgundy"),
  piece("Mustard beret", "headwear", "mustard"),
  piece("Teal shift dress", "one-piece", "teal"),
  piece("Sky-blue denim", "bottom", "sky"),
];

/** A listing of so many products, judged against a closet of twelve pieces by the project's own comparison. */
export function inventedPage(count: number): {
  readonly products: readonly SummaryProduct[];
  readonly verdicts: Map<string, ExplainedVerdict>;
} {
  const dyes = Object.keys(DYES);
  const prepared = prepareCloset(CLOSET);
  const byId = new Map(CLOSET.map((one) => [one.id, one]));
  const verdicts = new Map<string, ExplainedVerdict>();
  const products = Array.from({ length: count }, (_, at): SummaryProduct => {
    const [garment, slot] = GARMENTS[at % GARMENTS.length] ?? ["Piece", null];
    const first = dyes[(at * 5 + 3) % dyes.length] ?? "white";
    const second = dyes[(at * 3 + 1) % dyes.length] ?? "black";
    const unread = at % 16 === 15;
    const palette: Palette = unread
      ? { swatches: [], confidence: 0, evidence: [], reason: "The store’s picture host did not answer." }
      : {
          swatches: at % 6 === 4 ? [dyed(first, 0.7), dyed(second, 0.3)] : [dyed(first)],
          confidence: 0.95 - (at % 5) * 0.1,
          evidence: ["pixels"],
        };
    const key = `https://shop.example/${at}`;
    const candidate = { key, title: `${garment}, ${first}`, slot, palette };
    const verdict = judge(candidate, prepared);
    verdicts.set(key, explained(candidate, verdict, byId, at % 9 === 2));
    return {
      candidate,
      role: "tile",
      price: at % 11 === 7 ? null : { amount: 19 + ((at * 37) % 180) + (at % 3 ? 0.95 : 0), currency: "EUR" },
      image: `https://cdn.example/${at}.jpg`,
      link: key,
      brief: briefOf(candidate, verdict),
    };
  });
  return { products, verdicts };
}
