import { converter, filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit } from "culori";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ColorError } from "../../lib/color/color-error.ts";
import { confusedWith, looksAlikeTo, seenWith, VISIONS, type Vision } from "../../lib/color/color-vision.ts";
import { chromaOf, linearFromOklab, oklabFromLinear } from "../../lib/color/convert.ts";
import { deltaE2000 } from "../../lib/color/difference.ts";
import { labFromOklab } from "../../lib/color/lab.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { CLOSE_SHADE } from "../../lib/color/thresholds.ts";
import { anyOklab } from "./arbitraries.ts";
import { CAUS_FABRICS } from "./facts/caus-fabrics.ts";
import { COPUNCTAL_POINTS, D15_CAPS, D15_LIGHTNESS } from "./facts/d15-caps.ts";

const FILTERS = {
  protan: filterDeficiencyProt,
  deutan: filterDeficiencyDeuter,
  tritan: filterDeficiencyTrit,
};
const toRgb = converter("rgb");

const difference = (a: Oklab, b: Oklab) => deltaE2000({ lab: labFromOklab(a) }, { lab: labFromOklab(b) });

describe.each(VISIONS)("%s vision", (vision: Vision) => {
  /** culori multiplies gamma-encoded numbers by the published matrix; fed with linear numbers under that name it shows the matrix itself. */
  test("uses the published matrix at severity 1, on linear light", () => {
    const filter = FILTERS[vision](1);
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, part, (r, g, b) => {
        const reference = toRgb(filter({ mode: "rgb", r, g, b }));
        const seen = linearFromOklab(seenWith(vision, oklabFromLinear(r, g, b)));
        for (const [at, expected] of [reference.r, reference.g, reference.b].entries()) {
          expect(seen[at]).toBeCloseTo(expected, 9);
        }
      }),
    );
  });

  test("leaves greys as they are", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (lightness) => {
        const [seen, a, b] = seenWith(vision, [lightness, 0, 0]);
        expect(seen).toBeCloseTo(lightness, 5);
        expect(Math.hypot(a, b)).toBeLessThan(1e-5);
      }),
    );
  });

  test("sees a number for every colour, also beyond sRGB", () => {
    const axis = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), axis, axis), anyOklab, (a, b) => {
        for (const part of seenWith(vision, a)) expect(part).toSatisfy(Number.isFinite);
        expect(looksAlikeTo(vision, a, b)).toBeTypeOf("boolean");
      }),
    );
  });

  test("confuses the same pairs both ways, never a colour with itself", () => {
    fc.assert(
      fc.property(anyOklab, anyOklab, (a, b) => {
        expect(looksAlikeTo(vision, a, b)).toBe(looksAlikeTo(vision, b, a));
        expect(looksAlikeTo(vision, a, a)).toBe(false);
      }),
    );
  });

  test("says nothing of colours that nobody tells apart well", () => {
    const slight = fc.double({ min: -0.02, max: 0.02, noNaN: true });
    fc.assert(
      fc.property(anyOklab, fc.tuple(slight, slight, slight), (color, by) => {
        const near: Oklab = [color[0] + by[0], color[1] + by[1], color[2] + by[2]];
        fc.pre(difference(color, near) <= CLOSE_SHADE);
        expect(looksAlikeTo(vision, color, near)).toBe(false);
      }),
    );
  });

  test("confuses some named fabrics, and leaves most apart", () => {
    const fabrics = CAUS_FABRICS.map(({ hex }) => parseColor(hex));
    const pairs = fabrics.flatMap((one, at) => fabrics.slice(at + 1).map((other) => [one, other] as const));
    const confused = pairs.filter(([one, other]) => looksAlikeTo(vision, one, other));
    expect(confused.length).toBeGreaterThan(0);
    expect(confused.length).toBeLessThan(pairs.length / 10);
    for (const [one, other] of confused)
      expect(difference(seenWith(vision, one), seenWith(vision, other))).toBeLessThan(
        difference(one, other) / 1.5,
      );
  });

  /** Degrees in the u′v′ diagram: the model is not the same as the measured cones, nor is its white. */
  const AXIS_OFF = 10;

  test("mixes up the caps of the D-15 panel along the confusion lines of that vision", () => {
    const pairs = D15_CAPS.flatMap((cap, at) => D15_CAPS.slice(at + 1).map((other) => [cap, other] as const));
    const confused = pairs.filter(([one, other]) => looksAlikeTo(vision, capColor(one), capColor(other)));
    expect(confused.length).toBeGreaterThanOrEqual(10);
    const axis = axisOf(confused.map(([one, other]) => [other[0] - one[0], other[1] - one[1]]));
    const [u, v] = uvOf(...COPUNCTAL_POINTS[vision]);
    const line = (Math.atan2(v - D65_UV[1], u - D65_UV[0]) * 180) / Math.PI;
    const off = Math.abs(((((axis - line) % 180) + 270) % 180) - 90);
    expect(off).toBeLessThan(AXIS_OFF);
  });
});

/** Red and green, red and brown, violet and blue are what people with red-green deficiency mix up (common knowledge, no source). */
test.each([
  ["red", "#b32a33", "olive", "#64663d", "deutan"],
  ["red", "#b32a33", "brown", "#704b3e", "protan"],
  ["violet", "#7a5fb0", "blue", "#5a6cb2", "protan"],
  ["yellow", "#e1c058", "pink", "#e0a3ab", "none"],
  ["red", "#b32a33", "navy", "#252c48", "none"],
] as const)("%s %s and %s %s: %s", (_one, one, _other, other, vision) => {
  const confused = confusedWith(parseColor(one), parseColor(other));
  if (vision === "none") expect(confused).toEqual([]);
  else expect(confused).toContain(vision);
});

test("finds the visions that confuse a pair, whichever colour comes first", () => {
  fc.assert(
    fc.property(anyOklab, anyOklab, (a, b) => {
      const confused = confusedWith(a, b);
      expect(confused).toEqual(VISIONS.filter((vision) => looksAlikeTo(vision, a, b)));
      expect(confusedWith(b, a)).toEqual(confused);
    }),
  );
});

test("darkens reds for protan vision alone, which is how a person knows", () => {
  const red = parseColor("#b32a33");
  expect(seenWith("protan", red)[0]).toBeLessThan(red[0] - 0.05);
  for (const vision of ["deutan", "tritan"] as const)
    expect(seenWith(vision, red)[0]).toBeGreaterThan(red[0] - 0.02);
});

test("keeps hardly any chroma on the red-green axis", () => {
  const green = parseColor("#4f7f4f");
  for (const vision of ["protan", "deutan"] as const)
    expect(chromaOf(seenWith(vision, green))).toBeLessThan(chromaOf(green));
});

test.each([[[Number.NaN, 0, 0]], [[0.5, Number.POSITIVE_INFINITY, 0]]] as const)(
  "refuses %j by name",
  (color) => {
    const grey: Oklab = [0.5, 0, 0];
    for (const ask of [
      () => confusedWith(color, grey),
      () => confusedWith(grey, color),
      () => seenWith("tritan", color),
    ])
      expect(ask).toThrow(ColorError);
    expect(() => confusedWith(color, grey)).toThrow(color.join(" "));
  },
);

/** CIE 1976 u′, v′ of the D65 white (CIE 15). */
const D65_UV = uvOf(0.3127, 0.329);

/** CIE 1976 u′, v′ of CIE 1931 x, y (CIE 15). */
function uvOf(x: number, y: number): readonly [u: number, v: number] {
  const sum = -2 * x + 12 * y + 3;
  return [(4 * x) / sum, (9 * y) / sum];
}

/** A cap seen beside the white of a screen: CIELUV to XYZ (CIE 15) to linear sRGB (IEC 61966-2-1). */
function capColor([uStar, vStar]: readonly [number, number]): Oklab {
  const u = uStar / (13 * D15_LIGHTNESS) + D65_UV[0];
  const v = vStar / (13 * D15_LIGHTNESS) + D65_UV[1];
  const y = ((D15_LIGHTNESS + 16) / 116) ** 3;
  const x = (y * 9 * u) / (4 * v);
  const z = (y * (12 - 3 * u - 20 * v)) / (4 * v);
  return oklabFromLinear(
    3.2409699 * x - 1.5373832 * y - 0.4986108 * z,
    -0.9692436 * x + 1.8759675 * y + 0.0415551 * z,
    0.0556301 * x - 0.203977 * y + 1.0569715 * z,
  );
}

/** Degrees of the axis along which differences are longest: that of the greatest moment, as the scoring of the panel takes it. */
function axisOf(differences: readonly (readonly [number, number])[]): number {
  const sum = (part: (u: number, v: number) => number) =>
    differences.reduce((total, [u, v]) => total + part(u, v), 0);
  const spread = sum((u, v) => u * u - v * v);
  return (Math.atan2(2 * sum((u, v) => u * v), spread) / 2) * (180 / Math.PI);
}
