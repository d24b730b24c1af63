import { describe, expect, it } from "vitest";
import { shownAtFirst } from "../../lib/badge/first-screen.ts";

/** A screen's height; lengths in CSS pixels. */
const SCREEN = 900;
const shown = (top: number, height: number) => shownAtFirst(top, height, SCREEN);

describe("shownAtFirst", () => {
  it("is the part above the end of the first screen, of a large picture that runs past it", () => {
    expect(shown(219, 770)).toBe(681);
    expect(shown(0, 2000)).toBe(900);
    expect(shown(600, 800)).toBe(300);
  });

  it("is all of a picture that ends on the first screen, begins below it or lies above the page", () => {
    expect(shown(130, 770)).toBe(770);
    expect(shown(900, 770)).toBe(770);
    expect(shown(2400, 770)).toBe(770);
    expect(shown(-40, 2000)).toBe(2000);
  });

  it("is all of a tile, so that its badge stays in line with the others", () => {
    expect(shown(650, 300)).toBe(300);
    expect(shown(651, 450)).toBe(450);
  });

  it("is all of a picture of which the first screen shows hardly anything", () => {
    expect(shown(700, 770)).toBe(770);
    expect(shown(601, 2000)).toBe(2000);
  });
});
