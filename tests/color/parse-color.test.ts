import fc from "fast-check";
import { expect, test } from "vitest";
import { ColorError } from "../../lib/color/color-error.ts";
import { hexOf } from "../../lib/color/hex-of.ts";
import { parseColor } from "../../lib/color/parse-color.ts";

/** CSS Color 4: strings and the sRGB colour they mean, from its examples and tables. */
const CSS: readonly (readonly [css: string, hex: string])[] = [
  ["#e42833", "#e42833"],
  ["#F00", "#ff0000"],
  ["#ff0000ff", "#ff0000"],
  [" RebeccaPurple ", "#663399"],
  ["teal", "#008080"],
  ["rgb(51 170 51 / 1.0)", "#33aa33"],
  ["rgb(51, 170, 51)", "#33aa33"],
  ["rgb(20% 40% 60%)", "#336699"],
  ["hsl(120deg 100% 25%)", "#008000"],
  ["hsl(none 0% 50%)", "#808080"],
  ["hwb(60deg 40% 40%)", "#999966"],
  ["color(srgb 0.6 0 0.2)", "#990033"],
  ["color(srgb-linear 1 1 1)", "#ffffff"],
  ["oklab(40.101% 0.1147 0.0453)", "#7d2329"],
  ["oklch(59.686% 0.15619 49.7694)", "#c65d06"],
  ["lab(29.2345% 39.3825 20.0664)", "#7d2329"],
  ["lch(52.2345% 72.2 56.2)", "#c65d06"],
];

test.each(CSS)("%s is %s", (css, hex) => {
  expect(hexOf(parseColor(css))).toBe(hex);
});

/** What is refused, and a word of the reason. */
const REFUSED: readonly (readonly [css: string, reason: string])[] = [
  ["", "is no colour"],
  ["reddish", "is no colour"],
  ["add", "is no colour"],
  ["e42833", "is no colour"],
  ["#12345", "is no colour"],
  ["currentcolor", "is no colour"],
  ["rgb(NaN 0 0)", "is no colour"],
  ["oklab(calc(NaN) 0 0)", "is no colour"],
  ["transparent", "is see-through"],
  ["rgb(0 0 0 / 0.5)", "is see-through"],
  ["#ff000080", "is see-through"],
  ["oklch(50% -0.1 30)", "negative chroma"],
  ["lch(50% -20% 30)", "negative chroma"],
  ["color(display-p3 1 0 0)", "outside sRGB"],
  ["oklch(70% 0.4 150)", "outside sRGB"],
  ["rgb(300 0 0)", "outside sRGB"],
  ["rgb(-5 0 0)", "outside sRGB"],
  ["oklch(1.5 0 0)", "a lightness that is none"],
  ["oklab(-10% 0 0)", "a lightness that is none"],
  ["lab(120 0 0)", "a lightness that is none"],
  ["color(srgb 1e999 0 0)", "not finite"],
];

test.each(REFUSED)("refuses %j: %s", (css, reason) => {
  expect(() => parseColor(css)).toThrow(ColorError);
  expect(() => parseColor(css)).toThrow(reason);
  expect(() => parseColor(css)).toThrow(JSON.stringify(css));
});

const number = fc.oneof(
  fc.double({ min: -2, max: 400 }).map(String),
  fc.double().map(String),
  fc.constantFrom("none", "0", "50%", "-0", "1e999", "1e-999", "calc(1/0)", "120deg", "1turn", ""),
);

const cssLike = fc
  .tuple(
    fc.constantFrom("rgb", "hsl", "hwb", "lab", "lch", "oklab", "oklch", "color", "#"),
    fc.constantFrom("", "srgb ", "display-p3 ", "xyz "),
    fc.array(number, { maxLength: 5 }),
    fc.constantFrom(" ", ", ", " / "),
  )
  .map(([name, space, numbers, between]) => `${name}(${space}${numbers.join(between)})`);

test("gives finite numbers inside sRGB or a reason with the value, whatever is written", () => {
  fc.assert(
    fc.property(fc.oneof(cssLike, fc.string(), fc.string({ unit: "binary" })), (text) => {
      let color: readonly number[];
      try {
        color = parseColor(text);
      } catch (error) {
        expect(error).toBeInstanceOf(ColorError);
        expect(String(error)).toContain(JSON.stringify(text.slice(0, 80)));
        return;
      }
      expect(color.every(Number.isFinite)).toBe(true);
      expect(color[0]).toBeGreaterThanOrEqual(-1e-3);
      expect(color[0]).toBeLessThanOrEqual(1.005);
    }),
    { numRuns: 2000 },
  );
});
