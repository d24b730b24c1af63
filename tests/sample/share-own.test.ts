import { describe, expect, it } from "vitest";
import { findParts } from "../../lib/sample/find-parts.ts";
import { shadeOf } from "../../lib/sample/find-shades.ts";
import { rasterOf, sketchPlane } from "../../lib/sample/raster.ts";
import { shareOwn } from "../../lib/sample/shade-regions.ts";

/** Pixels a side. */
const SIDE = 48;

/** A dress of shade 0 with one spot of shade 1 in it, and an arm of shade 2 in the gap between its body, sleeve and hem. */
function dress() {
  const sketch = Object.assign(rasterOf(SIDE * SIDE), { width: SIDE, height: SIDE, count: SIDE * SIDE });
  const cloth = sketchPlane();
  shadeOf.fill(-1);
  const paint = (x0: number, y0: number, x1: number, y1: number, shade: number): void => {
    for (let y = y0; y < y1; y++) {
      for (let x = x0; x < x1; x++) {
        cloth[y * SIDE + x] = shade < 0 ? 0 : 1;
        shadeOf[y * SIDE + x] = shade;
      }
    }
  };
  paint(8, 4, 40, 44, 0);
  paint(12, 20, 16, 24, 1);
  paint(22, 10, 34, 38, -1);
  paint(25, 14, 31, 34, 2);
  findParts(sketch, shadeOf, cloth);
  return shareOwn(sketch, cloth, 0, false);
}

describe("a further colour of a worn piece", () => {
  it("belongs to it where it lies among the first one's pixels", () => {
    expect(dress()(1, false)).toBe(1);
  });
  it("belongs to it though it is like skin, where cloth lies all around it", () => {
    expect(dress()(1, true)).toBe(1);
  });
  it("does not where it is like skin and its outline is open, though the first colour lies on its four sides", () => {
    expect(dress()(2, true)).toBe(0);
  });
  it("does with the same outline where it is unlike skin", () => {
    expect(dress()(2, false)).toBe(1);
  });
});
