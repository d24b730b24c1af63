import { describe, expect, it } from "vitest";
import { balanced } from "../../lib/sample/white-card-balance.ts";
import { couldBeLamp } from "../../lib/sample/white-card-lamp.ts";
import { gainsOf, lightOf, luminanceOf } from "./card-light.ts";
import { apart, oklabOf } from "./color-distance.ts";
import { COLORCHECKER } from "./facts/colorchecker.ts";
import { ILLUMINANTS } from "./facts/illuminants.ts";
import {
  chartIn,
  colorAt,
  type Lamp,
  middleOf,
  shining,
  tinting,
  trueLight,
  truePaint,
} from "./lamp-chart.ts";
import type { Paint } from "./painted.ts";

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** CIEDE2000 of every patch against its published colour at the card's brightness, before and after pointing at the card. */
function errors(lamp: Lamp, card: number) {
  const chart = chartIn(lamp);
  const after = balanced(chart.data, gainsOf(chart, ...middleOf(card)));
  const patch = COLORCHECKER[card];
  if (!patch) throw new Error(`There is no patch ${card}.`);
  // How much light the exposure and the lamp gave is no error of colour: the same factor for all patches.
  const factor = luminanceOf(lightOf(colorAt(chart, after, card))) / luminanceOf(trueLight(patch));
  const against = (pixels: Uint8ClampedArray) =>
    COLORCHECKER.map((one, at) => apart(oklabOf(colorAt(chart, pixels, at)), truePaint(one, factor)));
  return { before: against(chart.data), after: against(after) };
}

const WHITE = 18;
const GREYS = [20, 21];

describe("the ColorChecker in a light that tints each channel by itself", () => {
  const casts = [
    ["lamp light", [1, 0.72, 0.4]],
    ["open shade", [0.6, 0.8, 1]],
    ["greenish tubes", [0.82, 1, 0.75]],
  ] as const;
  it.each(casts)(
    "comes back in %s by a grey patch, to a rest that 8 bits and the patch's own tint leave",
    (_, cast) => {
      for (const card of GREYS) {
        const { before, after } = errors(tinting(cast), card);
        expect(mean(before)).toBeGreaterThan(5);
        expect(mean(after)).toBeLessThan(0.8);
        expect(Math.max(...after)).toBeLessThan(2);
      }
    },
  );
  it.each(casts)(
    "comes out off by the white patch's own tint in %s, since that patch is not quite white",
    (_, cast) => {
      const { after } = errors(tinting(cast), WHITE);
      expect(mean(after)).toBeLessThan(1.6);
      expect(Math.max(...after)).toBeLessThan(3.6);
    },
  );
});

describe("the ColorChecker in lights that mix the channels", () => {
  const named = (names: readonly string[]) => ILLUMINANTS.filter(({ name }) => names.includes(name));
  it.each(named(["A", "FL4", "FL12", "LED-B1", "LED-B2"]))(
    "loses three quarters of a bulb's error: $name",
    (light) => {
      const { before, after } = errors(shining(light), 20);
      expect(mean(before)).toBeGreaterThan(16);
      expect(mean(after)).toBeLessThan(0.25 * mean(before));
      expect(Math.max(...after)).toBeLessThan(10);
    },
  );
  it.each(named(["FL2", "FL9", "FL11", "LED-B3"]))("loses nearly four fifths of a tube's: $name", (light) => {
    const { before, after } = errors(shining(light), 20);
    expect(mean(before)).toBeGreaterThan(9);
    expect(mean(after)).toBeLessThan(2.2);
    expect(Math.max(...after)).toBeLessThan(6);
  });
  it.each(named(["D50", "D55", "D75", "FL5", "FL8", "FL10", "LED-B4"]))(
    "comes near in daylights: $name",
    (light) => {
      const { before, after } = errors(shining(light), 20);
      expect(mean(after)).toBeLessThan(1.4);
      expect(mean(after)).toBeLessThan(0.4 * mean(before));
    },
  );
  it.each(named(["D65", "FL7"]))("is left as it is where the light was right: $name", (light) => {
    expect(mean(errors(shining(light), 20).after)).toBeLessThan(0.6);
  });
  it("does not restore saturated colours in the light of a bulb exactly, as it says", () => {
    const [light] = named(["A"]);
    if (!light) throw new Error("There is no illuminant A.");
    const { before, after } = errors(shining(light), 20);
    // The figures that the docstring of `balanced` gives.
    expect([mean(before), Math.max(...before)].map(Math.round)).toEqual([17, 25]);
    expect([mean(after), Math.max(...after)].map(Math.round)).toEqual([4, 9]);
  });
});

describe("what white can look like in a usual light", () => {
  const inXyz = (x: number, y: number): Paint => {
    const [X, Z] = [x / y, (1 - x - y) / y];
    // IEC 61966-2-1.
    return [
      3.2404542 * X - 1.5371385 - 0.4985314 * Z,
      -0.969266 * X + 1.8760108 + 0.041556 * Z,
      0.0556434 * X - 0.2040259 + 1.0572252 * Z,
    ];
  };
  it.each(ILLUMINANTS)("is the white of $name", ({ white: [x, y] }) => {
    expect(couldBeLamp(inXyz(x, y))).toBe(true);
  });
  it("is not what most coloured patches look like in daylight; a lamp's colours cannot be told from a lamp", () => {
    const passing = COLORCHECKER.slice(0, WHITE).filter((patch) => couldBeLamp(trueLight(patch)));
    expect(passing.map(({ name }) => name)).toEqual([
      "dark skin",
      "light skin",
      "blue sky",
      "blue flower",
      "orange yellow",
    ]);
    expect(COLORCHECKER.slice(WHITE).every((patch) => couldBeLamp(trueLight(patch)))).toBe(true);
  });
});
