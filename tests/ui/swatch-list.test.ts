import { array, assert, double, integer, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import type { Swatch } from "../../lib/sample/palette.ts";
import {
  addColour,
  dropColour,
  MOST_SWATCHES,
  recolour,
  refinish,
  reshare,
} from "../../lib/ui/closet-page/swatch-list.ts";

const RED: Oklab = CLOTH_COLORS.red;
const sum = (swatches: readonly Swatch[]) => swatches.reduce((total, { share }) => total + share, 0);

const swatchLists = array(double({ min: 0.05, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 }).map(
  (parts) => {
    const total = parts.reduce((one, other) => one + other);
    return parts.map((part): Swatch => ({ oklab: RED, share: part / total }));
  },
);

describe("the swatches of a piece", () => {
  it("keep shares that sum to 1 whatever is done to them", () => {
    assert(
      property(
        swatchLists,
        integer({ min: 0, max: 5 }),
        double({ min: 0, max: 1, noNaN: true }),
        (list, place, share) => {
          const at = place % list.length;
          const changed = [
            reshare(list, at, share),
            addColour(list, RED),
            recolour(list, at, RED),
            refinish(list, at, "gold"),
          ];
          if (list.length > 1) changed.push(dropColour(list, at));
          for (const one of changed) {
            expect(sum(one)).toBeCloseTo(1, 9);
            expect(one.every((swatch) => swatch.share > 0)).toBe(true);
            expect(one.length).toBeLessThanOrEqual(MOST_SWATCHES);
          }
        },
      ),
    );
  });

  it("keep the proportions of the others when one share is set", () => {
    const list = [0.5, 0.3, 0.2].map((share): Swatch => ({ oklab: RED, share }));
    const [first, second, third] = reshare(list, 0, 0.25).map(({ share }) => share);
    expect([first, second, third]).toEqual([0.25, expect.closeTo(0.45, 9), expect.closeTo(0.3, 9)]);
  });

  it("lose a metal with the colour it was said of", () => {
    const gold = refinish([{ oklab: RED, share: 1 }], 0, "gold");
    expect(gold[0]?.finish).toBe("gold");
    expect(recolour(gold, 0, CLOTH_COLORS.black)[0]).toEqual({ oklab: CLOTH_COLORS.black, share: 1 });
    expect(refinish(gold, 0, null)[0]).toEqual({ oklab: RED, share: 1 });
  });
});
