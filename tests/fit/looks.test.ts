import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ColorPoint, colorPoint } from "../../lib/color/color-point.ts";
import { schemeOf } from "../../lib/color/scheme.ts";
import { hueFromWheel } from "../../lib/color/wheel.ts";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import { followOneScheme, hueStepOf, isOneScheme, LOOK_HUE_STEP, NO_HUE } from "../../lib/fit/one-scheme.ts";
import type { OwnedPiece } from "../../lib/fit/prepared-piece.ts";
import type { Candidate, PieceFit } from "../../lib/fit/verdict.ts";
import type { Slot } from "../../lib/words/slot.ts";

const STEPS = 360 / LOOK_HUE_STEP;
const step = fc.oneof(
  { arbitrary: fc.nat(STEPS - 1), weight: 5 },
  { arbitrary: fc.constant(NO_HUE), weight: 1 },
);
const four = fc.tuple(step, step, step, step);

/** A strong colour whose hue lies exactly on a step, or grey. */
function pointAt(at: number): ColorPoint {
  if (at === NO_HUE) return colorPoint([0.5, 0, 0]);
  const wheel = at * LOOK_HUE_STEP;
  const hue = (hueFromWheel(wheel) * Math.PI) / 180;
  return { ...colorPoint([0.55, 0.12 * Math.cos(hue), 0.12 * Math.sin(hue)]), wheel };
}

describe("followOneScheme", () => {
  it("says what schemeOf says of the same hues", () => {
    fc.assert(
      fc.property(four, (steps) => {
        expect(followOneScheme(...steps)).toBe(isOneScheme(schemeOf(steps.map(pointAt))));
      }),
      { numRuns: 1000 },
    );
  });

  it("does not depend on order, on rotation of the wheel, or on its direction", () => {
    const moved = fc.tuple(four, fc.nat(STEPS - 1)).chain(([steps, turn]) =>
      fc.record({
        steps: fc.constant(steps),
        other: fc
          .shuffledSubarray(
            steps.map((at) => (at === NO_HUE ? NO_HUE : (at + turn) % STEPS)),
            { minLength: 4 },
          )
          .map(([a = 0, b = 0, c = 0, d = 0]) => [a, b, c, d] as const),
      }),
    );
    fc.assert(
      fc.property(moved, ({ steps, other }) => {
        expect(followOneScheme(...other)).toBe(followOneScheme(...steps));
        const mirrored = other.map((at) => (at === NO_HUE ? NO_HUE : (STEPS - at) % STEPS));
        const [a = 0, b = 0, c = 0, d = 0] = mirrored;
        expect(followOneScheme(a, b, c, d)).toBe(followOneScheme(...steps));
      }),
      { numRuns: 1000 },
    );
  });
});

const LOOK_SLOTS = ["top", "bottom", "one-piece", "layer", "shoes"] as const satisfies readonly Slot[];

const color = fc
  .record({
    l: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
    c: fc.oneof(fc.double({ min: 0.05, max: 0.2, noNaN: true }), fc.constant(0)),
    h: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
  })
  .map(({ l, c, h }) => [l, c * Math.cos(h), c * Math.sin(h)] as const);

const swatches = fc.oneof(
  color.map((oklab) => [{ oklab, share: 1 }]),
  fc.tuple(color, color).map(([one, other]) => [
    { oklab: one, share: 0.6 },
    { oklab: other, share: 0.4 },
  ]),
);

const scene = fc.record({
  closet: fc
    .array(fc.record({ slot: fc.constantFrom(...LOOK_SLOTS), swatches }), { maxLength: 14 })
    .map((pieces) =>
      pieces.map((piece, at): OwnedPiece => ({ ...piece, id: `p${at}`, name: `Piece ${at}` })),
    ),
  product: fc.record({ slot: fc.constantFrom(...LOOK_SLOTS), swatches }).map(
    ({ slot, swatches: own }): Candidate => ({
      key: "k",
      title: "Product",
      slot,
      palette: { swatches: own, confidence: 1, evidence: ["pixels"] },
    }),
  ),
});

describe("looks", () => {
  it("are as many as going through all combinations finds, and the examples are among them", () => {
    let optionalLooks = 0;
    fc.assert(
      fc.property(scene, ({ closet, product }) => {
        const verdict = judge(product, prepareCloset(closet));
        const byId = new Map(closet.map((piece) => [piece.id, piece]));
        const fits = (...slots: readonly string[]) =>
          verdict.pieces.filter(({ pieceId }) => slots.includes(byId.get(pieceId)?.slot ?? ""));
        const binds = ({ relation }: PieceFit) => relation !== "with-neutral";
        const points = ({ pieceId, pair }: PieceFit) =>
          [product.palette.swatches[pair[0]], byId.get(pieceId)?.swatches[pair[1]]].map((swatch) => {
            if (!swatch) throw new Error("the pair names no swatches");
            return pointAt(hueStepOf(colorPoint(swatch.oklab)));
          });
        const looks: string[] = [];
        if (product.slot === "top") looks.push(...fits("bottom").map(({ pieceId }) => pieceId));
        else if (product.slot === "bottom") looks.push(...fits("top").map(({ pieceId }) => pieceId));
        else if (product.slot === "one-piece") {
          looks.push(...fits("layer", "shoes").map(({ pieceId }) => pieceId));
        } else {
          looks.push(
            ...fits("one-piece")
              .filter(binds)
              .map(({ pieceId }) => pieceId),
          );
          for (const top of fits("top")) {
            for (const bottom of fits("bottom")) {
              const together = [...points(top), ...points(bottom)];
              if ((binds(top) || binds(bottom)) && isOneScheme(schemeOf(together))) {
                looks.push([top.pieceId, bottom.pieceId].toSorted().join(" "));
              }
            }
          }
          optionalLooks += looks.length;
        }
        expect(verdict.looks).toBe(looks.length);
        expect(verdict.lookExamples.length).toBeLessThanOrEqual(Math.min(6, looks.length));
        const core = (ids: readonly string[]) =>
          product.slot === "layer" || product.slot === "shoes" ? ids.toSorted().join(" ") : ids[0];
        const shown = verdict.lookExamples.map(({ pieceIds }) => core(pieceIds));
        expect(new Set(shown).size).toBe(shown.length);
        for (const look of shown) expect(looks).toContain(look);
        for (const { scheme } of verdict.lookExamples) expect(scheme).not.toBe("none");
      }),
      { numRuns: 200 },
    );
    expect(optionalLooks).toBeGreaterThan(0);
  });
});
