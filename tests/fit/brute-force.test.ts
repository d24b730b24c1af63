import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Oklab } from "../../lib/color/oklab.ts";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import type { OwnedPiece } from "../../lib/fit/prepared-piece.ts";
import type { Candidate } from "../../lib/fit/verdict.ts";
import type { Swatch } from "../../lib/sample/palette.ts";
import { SLOTS } from "../../lib/words/slot.ts";
import { apart, deltaE, pieceDifference, relationOf, shownOf, wheelOf, wornWith } from "./slow-comparison.ts";

/** The largest error of an angle between two strong colours that may change a name, degrees: red-oranges lie wide apart. */
const EDGE = 40;

/** Decimals of CIEDE2000 in which two sets of rounded matrices agree. */
const DECIMALS = 4;

/** CIEDE2000 this near a threshold may fall on either side of it. */
const SLACK = 1e-4;

/** Numbers in even steps, for fc.double prefers the ends of its range. */
const steps = (low: number, high: number) =>
  fc.integer({ min: low * 1000, max: high * 1000 }).map((n) => n / 1000);
const hue = fc.integer({ min: 0, max: 3599 }).map((n) => n / 10);
const strong = fc.record({ l: steps(0.4, 0.8), c: steps(0.12, 0.2), h: hue });
const neutral = fc.record({ l: steps(0.1, 0.95), c: steps(0, 0.008), h: hue });
const color: fc.Arbitrary<Oklab> = fc
  .oneof({ arbitrary: strong, weight: 3 }, { arbitrary: neutral, weight: 1 })
  .map(({ l, c, h }) => [l, c * Math.cos((h * Math.PI) / 180), c * Math.sin((h * Math.PI) / 180)]);

/** Colours from a small drawer, so that shades meet often. */
const swatches: fc.Arbitrary<(drawer: readonly Oklab[]) => readonly Swatch[]> = fc
  .record({
    picks: fc.array(fc.nat(1000), { minLength: 1, maxLength: 3 }),
    shares: fc.constantFrom([0.5, 0.3, 0.2], [0.6, 0.3, 0.1], [0.9, 0.06, 0.04]),
    nudge: steps(-0.02, 0.02),
  })
  .map(
    ({ picks, shares, nudge }) =>
      (drawer) =>
        picks.map((pick, at) => {
          const [l, a, b] = drawer[pick % drawer.length] ?? [0.5, 0, 0];
          return { oklab: [l + nudge, a, b] as const, share: shares[at] ?? 0 };
        }),
  );

const scene = fc
  .record({
    drawer: fc.array(color, { minLength: 3, maxLength: 6 }),
    pieces: fc.array(fc.record({ slot: fc.constantFrom(...SLOTS), swatches }), {
      minLength: 1,
      maxLength: 12,
    }),
    slot: fc.constantFrom(...SLOTS, null),
    candidate: swatches,
  })
  .map(({ drawer, pieces, slot, candidate }) => {
    const closet: readonly OwnedPiece[] = pieces.map((piece, at) => ({
      id: `p${at}`,
      name: `Piece ${at}`,
      slot: piece.slot,
      swatches: piece.swatches(drawer),
    }));
    const palette = { swatches: candidate(drawer), confidence: 1, evidence: ["pixels"] as const };
    const product: Candidate = { key: "k", title: "Product", slot, palette };
    return { closet, product };
  });

describe("against a slow comparison with culori", () => {
  it("finds the same duplicates with the same difference", () => {
    fc.assert(
      fc.property(scene, ({ closet, product }) => {
        const expected = closet
          .filter(({ slot }) => slot === product.slot)
          .map(({ id, swatches: its }) => ({
            id,
            difference: pieceDifference(shownOf(product.palette.swatches), shownOf(its)),
          }));
        fc.pre(expected.every((one) => Math.abs(one.difference - 6) > SLACK));
        const found = new Map(
          judge(product, prepareCloset(closet)).duplicates.map(({ pieceId, deltaE2000 }) => [
            pieceId,
            deltaE2000,
          ]),
        );
        for (const one of expected) {
          if (one.difference <= 6) expect(found.get(one.id)).toBeCloseTo(one.difference, DECIMALS);
          else expect(found.has(one.id)).toBe(false);
        }
        expect(found.size).toBe(expected.filter((one) => one.difference <= 6).length);
      }),
      { numRuns: 150 },
    );
  });

  it("names the same relation, or offers it where the hue is too near an edge, and leaves out only what has no name", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(scene, ({ closet, product }) => {
        const verdict = judge(product, prepareCloset(closet));
        const fits = new Map(verdict.pieces.map((fit) => [fit.pieceId, fit]));
        const duplicates = new Set(verdict.duplicates.map(({ pieceId }) => pieceId));
        for (const { id, slot, swatches: its } of closet) {
          const fit = fits.get(id);
          if (duplicates.has(id) || !wornWith(product.slot, slot)) {
            expect(fit).toBeUndefined();
            continue;
          }
          const pairs = shownOf(product.palette.swatches).flatMap((own) =>
            shownOf(its).map((other) => ({ own, other, relation: relationOf(own, other) })),
          );
          if (!fit) {
            for (const { own, other } of pairs) {
              const angle = apart(wheelOf(own) ?? Number.NaN, wheelOf(other) ?? Number.NaN);
              expect(angle).toBeGreaterThan(75 - EDGE);
              expect(angle).toBeLessThan(100 + EDGE);
            }
            continue;
          }
          const [own, other] = [product.palette.swatches[fit.pair[0]], its[fit.pair[1]]];
          if (!own || !other) throw new Error("the pair names no swatches");
          expect(fit.deltaE2000).toBeCloseTo(deltaE(own, other), DECIMALS);
          fc.pre(Math.abs(fit.deltaE2000 - 6) > SLACK);
          seen.add(relationOf(own, other));
          expect([fit.relation, ...fit.alternatives]).toContain(relationOf(own, other));
          expect(fit.relation === "matching").toBe(pairs.some(({ relation }) => relation === "matching"));
          expect(fit.alternatives).not.toContain(fit.relation);
        }
      }),
      { numRuns: 150 },
    );
    const named = [
      "analogous",
      "complementary",
      "matching",
      "monochromatic",
      "split-complementary",
      "triadic",
      "with-neutral",
    ];
    expect([...seen]).toEqual(expect.arrayContaining(named));
  });

  it("gives the same verdict whatever the order of the closet", () => {
    const shuffled = scene.chain(({ closet, product }) =>
      fc.record({
        closet: fc.constant(closet),
        other: fc.shuffledSubarray([...closet], { minLength: closet.length }),
        product: fc.constant(product),
      }),
    );
    fc.assert(
      fc.property(shuffled, ({ closet, other, product }) => {
        expect(judge(product, prepareCloset(other))).toEqual(judge(product, prepareCloset(closet)));
      }),
    );
  });
});
