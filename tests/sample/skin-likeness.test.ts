import { expect, test } from "vitest";
import { oklabFromRgb8 } from "../../lib/color/convert.ts";
import { skinLikeness } from "../../lib/sample/skin-likeness.ts";
import { MONK_SKIN } from "../store/studio/monk-skin.ts";

function likeness(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16));
  return skinLikeness(...oklabFromRgb8(r, g, b));
}

// The tones are published: monk-skin.ts names the source.
test.each(MONK_SKIN)("%s of the Monk Skin Tone Scale is like skin, as every other tone", (tone) => {
  expect(likeness(tone)).toBeGreaterThan(0.95);
});

// CSS Color Module Level 4, named colours.
test.each([
  ["red", "#ff0000"],
  ["green", "#008000"],
  ["blue", "#0000ff"],
  ["fuchsia", "#ff00ff"],
  ["teal", "#008080"],
  ["white", "#ffffff"],
  ["gold", "#ffd700"],
  ["mediumpurple", "#9370db"],
])("%s is not", (_, hex) => {
  expect(likeness(hex)).toBeLessThan(0.35);
});
