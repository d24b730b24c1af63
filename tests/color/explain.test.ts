import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";

const COMMAND = fileURLToPath(new URL("../commands/explain.ts", import.meta.url));

function explain(...colors: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...colors], { encoding: "utf8" });
  return { status, stdout, stderr };
}

/** Milliseconds. Each test starts a process of its own, which waits its turn on a busy machine. */
const PATIENCE = 60_000;

describe("explain", { timeout: PATIENCE }, () => {
  test("prints one colour as one JSON object and nothing else", () => {
    const { status, stdout, stderr } = explain("#808080");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(JSON.parse(stdout)).toEqual({
      colors: [
        {
          hex: "#808080",
          oklch: [0.5999, 0, 0],
          name: "grey",
          level: "neutral",
          neutral: true,
          wheel: null,
          iscc: "medium grey",
          levelAlternatives: [],
          tinted: false,
          oftenWornAsNeutral: false,
          saturation: 0,
          wheelUncertainty: null,
        },
      ],
    });
  });

  test("prints how two colours stand to each other", () => {
    const { stdout } = explain("#e42833", "rgb(31 157 85)");
    const printed = JSON.parse(stdout);
    expect(Object.keys(printed).slice(0, 6)).toEqual([
      "colors",
      "relation",
      "alternatives",
      "wheelAngle",
      "deltaE2000",
      "why",
    ]);
    expect(printed).toMatchObject({
      greyScale: "1",
      mayLookAlikeTo: [],
      scheme: { name: "complementary", whole: true },
    });
    expect(printed.caution).toContain("no photo can certify a textile match");
    expect(printed).toMatchObject({ relation: "complementary", alternatives: [], wheelAngle: 176.36 });
    expect(printed.colors[1]).toMatchObject({ hex: "#1f9d55", level: "pure", neutral: false, wheel: 182.8 });
  });

  test("prints the scheme of three colours, and nothing of pairs", () => {
    const printed = JSON.parse(explain("#e42833", "#d8a517", "#2a55b8").stdout);
    expect(Object.keys(printed)).toEqual(["colors", "scheme"]);
    expect(printed.scheme).toMatchObject({ name: "triadic", whole: true, missing: [] });
    expect(printed.scheme.off).toHaveLength(3);
  });

  test.each([
    [["reddish"], '"reddish" is no colour'],
    [[], "Give one colour, two or more"],
    [["red", "green", "oklch(0.6 -0.1 20)"], "negative chroma"],
  ])("refuses %j on standard error", (colors, reason) => {
    const { status, stdout, stderr } = explain(...colors);
    expect(status).not.toBe(0);
    expect(stdout).toBe("");
    expect(stderr).toContain(reason);
  });
});
