import { assert, double, integer, property, tuple } from "fast-check";
import { describe, expect, it } from "vitest";
import { readWhiteCard } from "../../lib/sample/white-card.ts";
import { balanced, type WhiteCardGains } from "../../lib/sample/white-card-balance.ts";
import { gainsOf, lightOf, luminanceOf } from "./card-light.ts";
import { box, everywhere, lit, type Paint, painted } from "./painted.ts";

const faultOf = (...args: Parameters<typeof readWhiteCard>): string => {
  const reading = readWhiteCard(...args);
  return "fault" in reading ? reading.fault : "none";
};
const SIDE = 60;
const picture = (data: Uint8ClampedArray) => ({ data, width: SIDE, height: SIDE });
const plain = (paint: Paint, noise = 0) =>
  picture(painted([everywhere(paint)], { width: SIDE, height: SIDE, noise }));
const over = (...layers: Parameters<typeof painted>[0]) =>
  picture(painted(layers, { width: SIDE, height: SIDE, noise: 0 }));

describe("a spot that cannot serve", () => {
  it.each([
    ["clipped in all channels", [255, 255, 255], "clipped"],
    ["clipped in one channel", [255, 214, 160], "clipped"],
    ["dark", [40, 42, 41], "dark"],
    ["red", [200, 60, 50], "coloured"],
    ["leaf green", [90, 140, 60], "coloured"],
    ["pink", [240, 170, 190], "coloured"],
    ["bluer than any sky", [70, 110, 220], "coloured"],
    ["redder than any bulb", [240, 120, 20], "coloured"],
  ] as const)("says so where it is %s", (_, paint, fault) => {
    expect(faultOf(plain(paint), 0.5, 0.5)).toBe(fault);
  });
  it("says so where two colours meet, and where there is no picture", () => {
    const halves = over(everywhere([230, 230, 230]), box(0, 0, 0.5, 1, [205, 180, 150]));
    expect(faultOf(halves, 0.5, 0.5)).toBe("uneven");
    expect(faultOf(halves, 0.2, 0.5)).toBe("none");
    const nothing = picture(new Uint8ClampedArray(SIDE * SIDE * 4));
    expect(faultOf(nothing, 0.5, 0.5)).toBe("empty");
  });
  it("always says what to do", () => {
    for (const paint of [
      [255, 255, 255],
      [20, 20, 20],
      [200, 60, 50],
    ] as const) {
      const reading = readWhiteCard(plain(paint), 0.5, 0.5);
      expect("message" in reading && reading.message).toMatch(/\. Point at /);
    }
  });
  it("is refused outright outside the picture or with a size that does not fit", () => {
    const card = plain([200, 200, 200]);
    expect(() => readWhiteCard(card, 1.2, 0.5)).toThrow(RangeError);
    expect(() => readWhiteCard(card, Number.NaN, 0.5)).toThrow(RangeError);
    expect(() => readWhiteCard({ ...card, width: SIDE - 1 }, 0.5, 0.5)).toThrow(RangeError);
    expect(() => readWhiteCard({ data: new Uint8ClampedArray(), width: 0, height: 0 }, 0, 0)).toThrow(
      RangeError,
    );
  });
});

describe("a spot that serves", () => {
  const LAMP: Paint = [232, 205, 160];
  const close = (gains: WhiteCardGains, to: WhiteCardGains) => {
    for (const [channel, gain] of gains.entries())
      expect(Math.abs(gain / (to[channel] ?? 0) - 1)).toBeLessThan(0.03);
  };
  const expected = gainsOf(plain(LAMP), 0.5, 0.5);

  it("comes out neutral and as bright as it was, at every place of any picture", () => {
    assert(
      property(
        tuple(integer({ min: 90, max: 240 }), integer({ min: -8, max: 0 }), integer({ min: -20, max: 0 })),
        tuple(double({ min: 0, max: 1, noNaN: true }), double({ min: 0, max: 1, noNaN: true })),
        ([value, green, blue], [x, y]) => {
          const paint: Paint = [value, value + green, value + blue];
          const card = plain(paint);
          const reading = readWhiteCard(card, x, y);
          if ("fault" in reading) throw new Error(reading.message);
          const [r = 0, g = 0, b = 0] = balanced(card.data, reading.gains);
          expect(Math.max(r, g, b) - Math.min(r, g, b)).toBeLessThanOrEqual(1);
          expect(luminanceOf(lightOf([r, g, b])) / luminanceOf(lightOf(paint))).toBeCloseTo(1, 1);
        },
      ),
    );
  });
  it("is read alike with a camera's noise, with dust and glints, and across a fold", () => {
    close(gainsOf(plain(LAMP, 12), 0.5, 0.5), expected);
    const dusty = {
      width: 600,
      height: 600,
      data: painted([everywhere(LAMP)], { width: 600, height: 600, noise: 0 }),
    };
    dusty.data.set([255, 255, 255], 4 * (300 * 600 + 300));
    dusty.data.set([10, 8, 6], 4 * (300 * 600 + 302));
    close(gainsOf(dusty, 0.5, 0.5), expected);
    const linen = over(lit(everywhere(LAMP), (x) => 0.8 + 0.2 * Math.sin(90 * x)));
    close(gainsOf(linen, 0.5, 0.5), expected);
  });
  it("leaves a photo alone whose spot is neutral already", () => {
    const card = plain([120, 120, 120]);
    card.data.set([10, 200, 30, 77], 0);
    expect(balanced(card.data, gainsOf(card, 0.5, 0.5))).toEqual(card.data);
  });
});

describe("balancing", () => {
  const GAINS: WhiteCardGains = [0.6, 1.1, 2.4];
  const one = (...rgba: [number, number, number, number]) => [
    ...balanced(Uint8ClampedArray.from(rgba), GAINS),
  ];
  it("keeps what it was given, and transparency", () => {
    const data = Uint8ClampedArray.from([10, 200, 30, 77]);
    expect(balanced(data, GAINS)[3]).toBe(77);
    expect([...data]).toEqual([10, 200, 30, 77]);
  });
  it("keeps blown-out white white, where plain factors would turn it blue", () => {
    expect(one(255, 255, 255, 255)).toEqual([255, 255, 255, 255]);
    const [r = 0, , b = 0] = one(255, 252, 190, 255);
    expect(b - r).toBeLessThanOrEqual(0);
  });
  it("takes only what the card says from a red that was cut off in a red thing", () => {
    const [r = 0, g = 0, b = 0] = one(255, 60, 40, 255);
    expect(r).toBe(Math.round(255 * 0.7977));
    expect(Math.max(g, b)).toBeLessThan(80);
  });
});
