import { converter, filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit } from "culori";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  confusedPairs,
  confusedWith,
  MACHADO_2009,
  seenWith,
  VISIONS,
  type Vision,
} from "../../lib/color/color-vision.ts";
import { linearFromOklab } from "../../lib/color/convert.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import { anyOklab } from "./arbitraries.ts";

const FILTERS = {
  protan: filterDeficiencyProt,
  deutan: filterDeficiencyDeuter,
  tritan: filterDeficiencyTrit,
};
const toRgb = converter("rgb");

describe.each(VISIONS)("%s vision", (vision: Vision) => {
  /** culori multiplies gamma-encoded numbers by the published matrix; fed with linear numbers under that name it shows the matrix itself. */
  test("uses the published matrix", () => {
    const filter = FILTERS[vision](1);
    fc.assert(
      fc.property(anyOklab, (color) => {
        const [r, g, b] = linearFromOklab(color);
        const reference = toRgb(filter({ mode: "rgb", r, g, b }));
        const seen = linearFromOklab(seenWith(vision, color));
        for (const [index, part] of [reference.r, reference.g, reference.b].entries()) {
          expect(seen[index]).toBeCloseTo(Math.min(1, Math.max(0, part)), 4);
        }
      }),
    );
  });

  test("leaves greys as they are", () => {
    for (const row of MACHADO_2009[vision]) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 5);
  });

  test("is confused by the same pairs both ways, and by no pair that all would confuse", () => {
    fc.assert(
      fc.property(anyOklab, anyOklab, (a, b) => {
        expect(confusedWith(a, b)).toEqual(confusedWith(b, a));
        expect(confusedWith(a, a)).toEqual([]);
      }),
    );
  });
});

/** Ochre and olive, violet and blue: pairs that red-green deficiency is known to confuse. Common knowledge, no source. */
test.each([
  ["#8a6d1f", "#6d7a1f", "deutan"],
  ["#7a5fb0", "#5a6cb2", "protan"],
] as const)("%s and %s look alike to some", (one, other, vision) => {
  expect(confusedWith(parseColor(one), parseColor(other))).toContain(vision);
});

test("lists the pairs of a set by index", () => {
  const colors = ["#8a6d1f", "black", "#6d7a1f"].map(parseColor);
  expect(confusedPairs("deutan", colors)).toEqual([[0, 2]]);
  expect(confusedPairs("tritan", colors)).toEqual([]);
});
