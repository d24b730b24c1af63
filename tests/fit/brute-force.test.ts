import { converter, differenceCiede2000 } from "culori";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Oklab } from "../../lib/color/oklab.ts";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import type { OwnedPiece } from "../../lib/fit/prepared-piece.ts";
import type { Candidate } from "../../lib/fit/verdict.ts";
import type { Swatch } from "../../lib/sample/palette.ts";
import { SLOTS, type Slot } from "../../lib/words/slot.ts";

/*
 * The whole comparison once more, slow and plain, from culori's colour spaces and CIEDE2000 and from the knots and bands that
 * lib/color states; written for this test only.
 */
const KNOTS = [
  [26, 0],
  [37, 30],
  [54, 60],
  [77, 90],
  [100, 120],
  [124, 150],
  [148, 180],
  [194, 210],
  [256, 240],
  [284, 270],
  [311, 300],
  [346, 330],
  [386, 360],
] as const;

/** What is worn with what, written out (common practice, no source). */
const NOT_WITH: Readonly<Record<Slot, readonly Slot[]>> = {
  top: ["top", "one-piece"],
  bottom: ["bottom", "one-piece"],
  "one-piece": ["one-piece", "top", "bottom"],
  layer: ["layer"],
  legwear: ["legwear"],
  shoes: ["shoes"],
  bag: ["bag"],
  headwear: ["headwear"],
  jewellery: [],
  accessory: [],
};

/** The largest error of an angle between two strong colours that may change a name, degrees: red-oranges lie wide apart. */
const EDGE = 40;

/** Decimals of CIEDE2000 in which two sets of rounded matrices agree. */
const DECIMALS = 4;

/** CIEDE2000 this near a threshold may fall on either side of it. */
const SLACK = 1e-4;

const toLab = converter("lab65");
const toOklch = converter("oklch");
const difference = differenceCiede2000();

const culoriOf = ([l, a, b]: Oklab) => ({ mode: "oklab" as const, l, a, b });
const deltaE = (one: Swatch, other: Swatch) =>
  difference(toLab(culoriOf(one.oklab)), toLab(culoriOf(other.oklab)));

/** Angle on the artist's wheel; null for a neutral. The colours of this test are clearly the one or the other. */
function wheelOf({ oklab }: Swatch): number | null {
  const { c, h = 0 } = toOklch(culoriOf(oklab));
  if (c < 0.02) return null;
  const hue = h < 26 ? h + 360 : h;
  for (const [at, [from, start]] of KNOTS.entries()) {
    const next = KNOTS[at + 1];
    if (next && hue >= from && hue <= next[0]) {
      return (start + ((hue - from) * (next[1] - start)) / (next[0] - from)) % 360;
    }
  }
  throw new Error(`no knot for ${hue}`);
}

function apart(one: number, other: number): number {
  const turn = Math.abs(one - other) % 360;
  return Math.min(turn, 360 - turn);
}

function bandOf(angle: number): string {
  if (angle <= 15) return "monochromatic";
  if (angle <= 75) return "analogous";
  if (angle <= 100) return "none";
  if (angle <= 140) return "triadic";
  return angle <= 160 ? "split-complementary" : "complementary";
}

/** The plain name of two colours, without any hedge. */
function relationOf(one: Swatch, other: Swatch): string {
  if (deltaE(one, other) <= 6) return "matching";
  const [angle, otherAngle] = [wheelOf(one), wheelOf(other)];
  return angle === null || otherAngle === null ? "with-neutral" : bandOf(apart(angle, otherAngle));
}

const shownOf = (swatches: readonly Swatch[]) =>
  swatches.filter(({ share }, at) => at === 0 || share >= 0.15);

/** Least difference of a swatch to any of a piece; the worst of all, both ways. */
function pieceDifference(one: readonly Swatch[], other: readonly Swatch[]): number {
  const least = (swatch: Swatch, among: readonly Swatch[]) =>
    Math.min(...among.map((x) => deltaE(swatch, x)));
  return Math.max(...one.map((swatch) => least(swatch, other)), ...other.map((swatch) => least(swatch, one)));
}

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

const wornWith = (slot: Slot | null, other: Slot) => slot === null || !NOT_WITH[slot].includes(other);

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
