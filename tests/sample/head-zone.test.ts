import { expect, test } from "vitest";
import { findParts } from "../../lib/sample/find-parts.ts";
import { shadeOf } from "../../lib/sample/find-shades.ts";
import { readHeadZone } from "../../lib/sample/head-zone.ts";
import { rasterOf, sketchPlane } from "../../lib/sample/raster.ts";

/** Ten columns of a figure from row 2 to row 41: a head of shade 0 on a body of shade 1, with hands of shade 0 below. */
function figure() {
  const sketch = Object.assign(rasterOf(48 * 48), { width: 48, height: 48, count: 48 * 48 });
  const cloth = sketchPlane();
  shadeOf.fill(-1);
  for (let y = 2; y < 42; y++) {
    for (let x = 20; x < 30; x++) {
      cloth[y * 48 + x] = 1;
      shadeOf[y * 48 + x] = y < 8 || y >= 40 ? 0 : 1;
    }
  }
  findParts(sketch, shadeOf, cloth);
  return readHeadZone(sketch, cloth, 2);
}

test("the top fifth of a figure is its head zone: six rows of the head and three of the body", () => {
  const [head, body] = figure();
  expect(head?.share).toBeCloseTo(6 / 9, 5);
  expect(body?.share).toBeCloseTo(3 / 9, 5);
});

test("of a shade that shows elsewhere too, only a part is there", () => {
  const [head, body] = figure();
  expect(head?.of).toBeCloseTo(6 / 8, 5);
  expect(body?.of).toBeCloseTo(3 / 32, 5);
});
