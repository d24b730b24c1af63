import { converter } from "culori";
import { describe, expect, test } from "vitest";
import { ISCC_NAMES } from "../../lib/color/data/iscc-names.ts";
import { type Level, type Nuance, nuanceOf, surfaceNuanceOf } from "../../lib/color/level.ts";
import {
  FULL_SURFACE_BLACK,
  FULL_SURFACE_HUE,
  PURE_COLOR_PART,
  SHADE_WHITE_AT_MOST,
  TINT_BLACK_AT_MOST,
} from "../../lib/color/thresholds.ts";
import { pointOf } from "./arbitraries.ts";
import { FULLEST_SURFACES } from "./facts/pointer-gamut.ts";
import { UW_NAMES } from "./facts/uw-names.ts";

const CENTROIDS = ISCC_NAMES.split("|").map((row) => ({
  name: row.slice(7),
  point: pointOf(`#${row.slice(0, 6)}`),
}));

/**
 * The level that an ISCC-NBS modifier says in art-school words, where it says one: our reading of K. L. Kelly, D. B. Judd, NBS SP 440,
 * 1976. Brown, olive and pink are left out: they are shades and tints by their hue word already.
 */
const READINGS: readonly (readonly [modifier: string, level: Level])[] = [
  ["vivid", "pure"],
  ["very light", "tint"],
  ["very pale", "tint"],
  ["pale", "tint"],
  ["very deep", "shade"],
  ["deep", "shade"],
  ["very dark", "shade"],
  ["moderate", "tone"],
  ["light greyish", "tone"],
  ["greyish", "tone"],
];

/** The modifiers that leave two readings open, and "light". */
const WIDER_READINGS: readonly (readonly [modifier: string, ...levels: Level[]])[] = [
  ["strong", "pure", "tone"],
  ["brilliant", "pure", "tint"],
  ["light", "tint"],
  ["dark greyish", "tone", "shade"],
  ["dark", "shade", "tone"],
  ["blackish", "shade", "neutral"],
];

const BY_HUE_WORD = /brown|olive|pink|white|grey$|black$/;

function readingOf(name: string): Level | null {
  if (BY_HUE_WORD.test(name)) return null;
  return READINGS.find(([modifier]) => name.startsWith(`${modifier} `))?.[1] ?? null;
}

describe("levels of the ISCC-NBS centroids", () => {
  const read = CENTROIDS.flatMap(({ name, point }) => {
    const level = readingOf(name);
    const hue = name.replace(new RegExp(`^(${READINGS.map(([modifier]) => modifier).join("|")}) `), "");
    return level === null ? [] : [{ name, level, hue, point, nuance: surfaceNuanceOf(point.oklab) }];
  });

  test("the level is what the modifier says in 99 of the 101 rows that allow one reading", () => {
    expect(read).toHaveLength(101);
    const wrong = read.filter(({ level, point }) => point.level !== level).map(({ name }) => name);
    expect(wrong).toEqual(["deep greenish blue", "vivid purplish blue"]);
  });

  test("a hedge is given to about a fifth of them", () => {
    const hedged = read.filter(({ point }) => point.levelAlternatives.length > 0).length;
    expect(hedged).toBeGreaterThan(15);
    expect(hedged).toBeLessThan(30);
  });

  test("the level is among the readings in 94 % of the rows whose modifier is wider, and with its hedge in all", () => {
    const rows = CENTROIDS.flatMap(({ name, point }) => {
      const levels = WIDER_READINGS.find(([modifier]) => name.startsWith(`${modifier} `))?.slice(1);
      const narrower = readingOf(name) !== null || BY_HUE_WORD.test(name);
      return levels === undefined || narrower ? [] : [{ levels, point }];
    });
    expect(rows).toHaveLength(68);
    const right = rows.filter(({ levels, point }) => levels.includes(point.level));
    expect(right.length / rows.length).toBeGreaterThan(0.94);
    const hedged = rows.filter(({ levels, point }) =>
      [point.level, ...point.levelAlternatives].some((level) => levels.includes(level)),
    );
    expect(hedged).toHaveLength(rows.length);
  });

  test("browns and olives are shades or tones; pinks are tints, save dark and brownish ones", () => {
    for (const { name, point } of CENTROIDS) {
      if (/(brown|olive)$/.test(name)) expect(["shade", "tone"]).toContain(point.level);
      if (name.endsWith("pink") && !/^(dark|brownish) /.test(name)) expect(point.level).toBe("tint");
    }
  });

  describe("with the three limits chosen without the rows to be judged", () => {
    type Limits = readonly [pure: number, black: number, white: number];
    const steps = Array.from({ length: 9 }, (_, step) => 0.02 * step);
    const GRID: readonly Limits[] = steps.flatMap((pure) =>
      steps.flatMap((black) => steps.map((white): Limits => [0.4 + pure, 0.26 + black, 0.07 + white])),
    );

    function levelWithin([pure, tint, shade]: Limits, { white, black }: Nuance): Level {
      if (1 - white - black >= pure) return "pure";
      if (black <= tint && white > black) return "tint";
      return white <= shade && black > white ? "shade" : "tone";
    }

    /** Per limits of the grid: which rows they hold for. */
    const holds = GRID.map((limits) =>
      read.map(({ level, nuance }) => levelWithin(limits, nuance) === level),
    );

    /** Share of the rows that hold with the limits best for all rows outside their group; of several as good, on average. */
    function shareWithoutOwnGroup(groups: readonly (string | number)[]): number {
      let right = 0;
      for (const group of new Set(groups)) {
        const score = (held: readonly boolean[]) =>
          held.filter((held, row) => held && groups[row] !== group).length;
        const best = Math.max(...holds.map(score));
        const chosen = holds.filter((held) => score(held) === best);
        for (const held of chosen)
          right += held.filter((held, row) => held && groups[row] === group).length / chosen.length;
      }
      return right / groups.length;
    }

    test("the rule judged here is the rule in use", () => {
      const inUse: Limits = [PURE_COLOR_PART, TINT_BLACK_AT_MOST, SHADE_WHITE_AT_MOST];
      for (const { point, nuance } of read) {
        if (!point.neutral) expect(levelWithin(inUse, nuance)).toBe(point.level);
      }
    });

    test("97 % hold, whichever fifth of the rows is left out", () => {
      expect(shareWithoutOwnGroup(read.map((_, row) => row % 5))).toBeGreaterThan(0.965);
    });

    test("97 % hold, whichever hue is left out", () => {
      expect(shareWithoutOwnGroup(read.map(({ hue }) => hue))).toBeGreaterThan(0.965);
    });
  });
});

/** How people use the words on screens: our reading. A shop's "dark green" need be no shade by ISCC-NBS, so that this holds less often. */
const EVERYDAY_MODIFIERS: readonly (readonly [RegExp, Level])[] = [
  [/^(light|pale|pastel|baby) /, "tint"],
  [/^(dark|deep) /, "shade"],
  [/^(dull|dusty) /, "tone"],
  [/^bright /, "pure"],
];

test("people's modifiers in a survey that placed no limit say the level, or its hedge, in three of four names", () => {
  const rows = UW_NAMES.flatMap(([name, hex]) => {
    const level = EVERYDAY_MODIFIERS.find(([modifier]) => modifier.test(name))?.[1];
    const ofHue = /^\w+ (red|orange|yellow|green|blue|purple|violet|teal|turquoise|magenta)$/.test(name);
    return level === undefined || !ofHue ? [] : [{ level, point: pointOf(hex) }];
  });
  expect(rows.length).toBeGreaterThan(50);
  const right = rows.filter(({ level, point }) => [point.level, ...point.levelAlternatives].includes(level));
  expect(right.length / rows.length).toBeGreaterThan(0.75);
});

describe("blackness of the fullest surfaces (Pointer 1980)", () => {
  const toOklch = converter("oklch");
  const surfaces = FULLEST_SURFACES.map(([hue, lightness, chroma]) => {
    const { l, c, h = 0 } = toOklch({ mode: "lch65", l: lightness, c: chroma, h: hue });
    const turn = (h * Math.PI) / 180;
    return { hue: h, black: nuanceOf([l, c * Math.cos(turn), c * Math.sin(turn)]).black };
  });

  /** Root mean square of what a cosine with this peak and hue leaves. */
  function rest(most: number, hue: number): number {
    const squares = surfaces.map((surface) => {
      const near = Math.max(0, Math.cos(((surface.hue - hue) * Math.PI) / 180));
      return (surface.black - most * (1 - near)) ** 2;
    });
    return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
  }

  test("is least squares what the levels take it for", () => {
    const best = rest(FULL_SURFACE_BLACK, FULL_SURFACE_HUE);
    expect(best).toBeLessThan(0.065);
    for (const most of [0.34, 0.35, 0.36, 0.37]) {
      for (const hue of [63, 65, 69, 71]) expect(rest(most, hue)).toBeGreaterThan(best);
    }
  });
});
