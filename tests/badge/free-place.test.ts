import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freePlace, LEAST_WIDTH, type Spot, STRIP } from "../../lib/badge/free-place.ts";

const picture = { width: 200, height: 260, shown: 260 };
const spot = (left: number, top: number, width: number, height: number): Spot => ({
  left,
  top,
  right: left + width,
  bottom: top + height,
});
/** Enough for words. */
const ENOUGH = 112;
const place = (...taken: Spot[]) => freePlace(picture, taken, ENOUGH);

describe("freePlace", () => {
  it("is all of the bottom where nothing else is", () => {
    expect(place()).toEqual({ left: 0, bottom: 260, width: 200 });
    expect(place(spot(160, 8, 36, 36))).toEqual({ left: 0, bottom: 260, width: 200 });
  });

  it("is beside what stands at the bottom, while words have room there", () => {
    expect(place(spot(156, 216, 36, 36))).toEqual({ left: 0, bottom: 260, width: 156 });
    expect(place(spot(0, 240, 60, 20))).toEqual({ left: 60, bottom: 260, width: 140 });
  });

  it("is above what takes the whole bottom", () => {
    expect(place(spot(0, 220, 200, 40))).toEqual({ left: 0, bottom: 220, width: 200 });
  });

  it("is at the bottom as ever where there is no room at all", () => {
    expect(place(spot(10, 10, 180, 250))).toEqual({ left: 0, bottom: 260, width: 200 });
  });

  describe("on a picture of which only the upper part shows", () => {
    const cut = (...taken: Spot[]) => freePlace({ ...picture, shown: 150 }, taken, ENOUGH);

    it("is in that part, clear of what stands there", () => {
      expect(cut()).toEqual({ left: 0, bottom: 150, width: 200 });
      expect(cut(spot(0, 240, 200, 20))).toEqual({ left: 0, bottom: 150, width: 200 });
      expect(cut(spot(150, 120, 36, 36))).toEqual({ left: 0, bottom: 150, width: 150 });
      expect(cut(spot(0, 120, 200, 60))).toEqual({ left: 0, bottom: 120, width: 200 });
    });

    it("is below it where there is no room in it, and in it again where there is none at all", () => {
      expect(cut(spot(0, 0, 200, 160))).toEqual({ left: 0, bottom: 260, width: 200 });
      expect(cut(spot(0, 0, 200, 260))).toEqual({ left: 0, bottom: 150, width: 200 });
    });
  });

  it("covers nothing and stays on the picture, whatever is there", () => {
    const side = (most: number) => fc.integer({ min: 0, max: most });
    const spots = fc.array(fc.tuple(side(190), side(250), side(90), side(90)), { maxLength: 6 });
    fc.assert(
      fc.property(spots, (boxes) => {
        const taken = boxes.map(([left, top, width, height]) => spot(left, top, width + 1, height + 1));
        const { left, bottom, width } = place(...taken);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(left + width).toBeLessThanOrEqual(200);
        expect(bottom).toBeLessThanOrEqual(260);
        expect(width).toBeGreaterThanOrEqual(LEAST_WIDTH);
        const clear = taken.every(
          (box) =>
            box.right <= left ||
            box.left >= left + width ||
            box.top >= bottom ||
            box.bottom <= bottom - STRIP,
        );
        const givenUp = left === 0 && bottom === 260 && width === 200;
        expect(clear || givenUp).toBe(true);
      }),
    );
  });
});
