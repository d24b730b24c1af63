import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import type { Piece, Wish } from "../../lib/closet/piece.ts";
import { QUICK_PIECES, quickPiece } from "../../lib/closet/quick-start.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import { SLOTS } from "../../lib/words/slot.ts";

const START = Date.UTC(2026, 0, 5);

/** A dozen pieces as a person would have them after the first minutes, a print among them. */
export function twelvePieces(): readonly Piece[] {
  return QUICK_PIECES.filter((_, at) => at % 2 === 1)
    .slice(0, 12)
    .map((quick, at) => quickPiece(quick, START + at));
}

/** Any number of pieces in all slots, with colours spread over the wheel, levels and neutrals; the same on every run. */
export function manyPieces(count: number): readonly Piece[] {
  return Array.from({ length: count }, (_, at): Piece => {
    const slot = SLOTS[at % SLOTS.length] ?? "top";
    const main = colourAt(at);
    const printed = at % 7 === 0;
    return {
      id: `piece-${at}`,
      name: `${NOUNS[at % NOUNS.length]} no. ${at + 1}`,
      slot,
      swatches: printed
        ? [
            { oklab: main, share: 0.6 },
            { oklab: colourAt(at * 3 + 1), share: 0.28 },
            { oklab: CLOTH_COLORS.white, share: 0.12 },
          ]
        : [{ oklab: main, share: 1 }],
      addedAt: START + at,
    };
  });
}

const NOUNS = [
  "Linen shirt",
  "Pleated skirt",
  "Wool coat",
  "Knit",
  "Canvas bag",
  "Silk scarf",
  "Trousers",
] as const;

/** The golden angle spreads any number of hues evenly (H. Vogel, "A better way to construct the sunflower head", 1979). */
const GOLDEN_ANGLE = 137.508;

function colourAt(at: number): Oklab {
  const hue = (at * GOLDEN_ANGLE * Math.PI) / 180;
  const lightness = 0.28 + ((at * 37) % 61) / 100;
  const chroma = at % 4 === 3 ? 0.004 : 0.03 + ((at * 53) % 13) / 100;
  return [lightness, chroma * Math.cos(hue), chroma * Math.sin(hue)];
}

/** Three wishes: one plain, one print, one whose picture could not be read. */
export function threeWishes(): readonly Wish[] {
  const read = { confidence: 0.9, evidence: ["pixels"] } as const;
  return [
    {
      id: "https://shop.localhost/cardigan",
      title: "Ribbed cardigan with horn buttons",
      slot: "layer",
      palette: { ...read, swatches: [{ oklab: CLOTH_COLORS.rust, share: 1 }] },
      price: { amount: 89.5, currency: "EUR" },
      link: "https://shop.localhost/cardigan",
      store: "shop.localhost",
      savedAt: START + 3,
    },
    {
      id: "https://shop.localhost/skirt",
      title: "Bias-cut midi skirt, leaf print",
      slot: "bottom",
      palette: {
        ...read,
        swatches: [
          { oklab: CLOTH_COLORS.teal, share: 0.6 },
          { oklab: CLOTH_COLORS.mustard, share: 0.25 },
          { oklab: CLOTH_COLORS.cream, share: 0.15 },
        ],
      },
      price: { amount: 120, currency: "EUR" },
      link: "https://shop.localhost/skirt",
      store: "shop.localhost",
      savedAt: START + 2,
    },
    {
      id: "https://shop.localhost/mystery",
      title: "Drop of the week",
      slot: null,
      palette: { swatches: [], confidence: 0, evidence: [], reason: "Its picture could not be loaded." },
      price: null,
      link: null,
      store: "shop.localhost",
      savedAt: START + 1,
    },
  ];
}
