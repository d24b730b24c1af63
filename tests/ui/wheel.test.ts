import { describe, expect, it } from "vitest";
import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import type { Vision } from "../../lib/color/color-vision.ts";
import { inSrgb } from "../../lib/color/convert.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import { angleBetween, wheelFromHue } from "../../lib/color/wheel.ts";
import { type HungPiece, hangPieces } from "../../lib/ui/closet-page/hung-piece.ts";
import { kinOf } from "../../lib/ui/closet-page/kin.ts";
import { dotRadius, nearestDot, placeDots, WHEEL } from "../../lib/ui/closet-page/place-dots.ts";
import { HUE_CHOICES, shadeCard } from "../../lib/ui/closet-page/shade-card.ts";
import { stepName } from "../../lib/ui/closet-page/wheel-steps.ts";
import { arcPath, onWheel } from "../../lib/ui/on-wheel.ts";
import { manyPieces } from "./example-pieces.ts";

describe("dots on the wheel", () => {
  const dots = placeDots(hangPieces(manyPieces(300)));

  it("stand at the angle of their colour, whatever they were moved for room", () => {
    const coloured = dots.filter(({ hung }) => hung.point.wheel !== null);
    expect(coloured.length).toBeGreaterThan(200);
    for (const { hung, x, y } of coloured) {
      const angle = (Math.atan2(x, -y) * 180) / Math.PI;
      expect(angleBetween(angle, hung.point.wheel ?? Number.NaN)).toBeLessThan(1e-6);
      expect(Math.hypot(x, y) + dotRadius(300)).toBeLessThanOrEqual(WHEEL.dotOuter + 1e-9);
    }
  });

  it("stand on the strip where they are neutral, darker to the left", () => {
    const neutral = dots
      .filter(({ hung }) => hung.point.wheel === null)
      .toSorted((one, other) => one.hung.point.oklab[0] - other.hung.point.oklab[0]);
    expect(neutral.length).toBeGreaterThan(50);
    for (const { x, y } of neutral) {
      expect(Math.abs(x)).toBeLessThanOrEqual(WHEEL.stripHalf);
      expect(y).toBeGreaterThanOrEqual(WHEEL.stripTop);
      expect(y).toBeLessThanOrEqual(WHEEL.stripTop + WHEEL.stripHeight);
    }
    expect(neutral.map(({ x }) => x)).toEqual(
      neutral.map(({ x }) => x).toSorted((one, other) => one - other),
    );
  });

  it("are found by a pointer near them, and by none that is far", () => {
    for (const dot of dots.slice(0, 20)) {
      const found = nearestDot(dots, { x: dot.x, y: dot.y }, 16);
      expect(found && Math.hypot(found.x - dot.x, found.y - dot.y)).toBe(0);
    }
    expect(nearestDot(dots, { x: 1000, y: 0 }, 16)).toBeNull();
  });
});

it("puts red at the top of the wheel, yellow and blue a third clockwise each", () => {
  expect(onWheel(0, 10)).toEqual({ x: 0, y: -10 });
  expect(onWheel(120, 10).x).toBeGreaterThan(0);
  expect(onWheel(240, 10).x).toBeLessThan(0);
  expect(arcPath(-15, 15, 10)).toMatch(/^M-2\.59 -9\.66A10 10 0 0 1 2\.59 -9\.66$/);
});

describe("how pieces stand to a chosen one", () => {
  const hungAs = (colours: Readonly<Record<string, Oklab>>): readonly HungPiece[] =>
    hangPieces(
      Object.entries(colours).map(([name, oklab]) => ({
        id: name,
        name,
        slot: "top",
        swatches: [{ oklab, share: 1 }],
        addedAt: 0,
      })),
    );

  it("names the trade's own examples: red with green, with burgundy and with black", () => {
    const { red, green, burgundy, black } = CLOTH_COLORS;
    const hung = hungAs({ red, green, burgundy, black });
    const [first] = hung;
    const groups = first ? kinOf(first, hung, null) : [];
    const names = Object.fromEntries(
      groups.map(({ relation, kin }) => [relation, kin.map((one) => one.hung.piece.name)]),
    );
    expect(names.complementary).toEqual(["green"]);
    expect(names.monochromatic).toEqual(["burgundy"]);
    expect(names["with-neutral"]).toEqual(["black"]);
    expect(groups.find(({ relation }) => relation === "complementary")?.hint).toBe("green");
    expect(groups.at(-1)?.relation).toBe("with-neutral");
  });

  it("tells which of them look alike to someone who mixes up reds and greens", () => {
    const { olive, red, navy } = CLOTH_COLORS;
    const hung = hungAs({ olive, red, navy });
    const [first] = hung;
    const alike = (vision: Vision | null) =>
      (first ? kinOf(first, hung, vision) : [])
        .flatMap(({ kin }) => kin.filter(({ lookAlike }) => lookAlike))
        .map((one) => one.hung.piece.name);
    expect([alike("deutan"), alike("tritan"), alike(null)]).toEqual([["red"], [], []]);
  });

  it.each([
    ["a neutral", CLOTH_COLORS.black],
    ["a cream too faint for its hue to count", [0.93, 0, 0.028]],
  ] as const)("gives %s no place to look at", (_, oklab) => {
    const hung = hungAs({ chosen: oklab, red: CLOTH_COLORS.red, cobalt: CLOTH_COLORS.cobalt });
    const [first] = hung;
    expect(first && kinOf(first, hung, null).map(({ relation, hint }) => [relation, hint])).toEqual([
      ["with-neutral", ""],
    ]);
  });
});

describe("the shade card", () => {
  it("holds only colours that a screen shows, at the hue asked for", () => {
    for (const angle of HUE_CHOICES) {
      for (const oklab of shadeCard(angle)) {
        expect(inSrgb(oklab)).toBe(true);
        const hue = (Math.atan2(oklab[2], oklab[1]) * 180) / Math.PI;
        expect(angleBetween(wheelFromHue(hue), angle)).toBeLessThan(1e-6);
      }
    }
    expect(shadeCard(null).every(([, a, b]) => Math.hypot(a, b) < 0.001)).toBe(true);
  });
});

it("names the steps of the wheel", () => {
  expect([0, 14, 16, 120, 240, 359, -30, 480].map(stepName)).toEqual([
    "red",
    "red",
    "red-orange",
    "yellow",
    "blue",
    "red",
    "red-violet",
    "yellow",
  ]);
});
