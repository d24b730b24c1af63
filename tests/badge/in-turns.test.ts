import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { inTurns } from "../../lib/badge/in-turns.ts";

describe("inTurns", () => {
  let now = 0;
  beforeEach(() => {
    now = 0;
    vi.spyOn(performance, "now").mockImplementation(() => now);
  });
  afterEach(() => {
    vi.restoreAllMocks();
    vi.unstubAllGlobals();
  });

  /** Which things were changed together, where measuring one takes so many milliseconds. */
  const turnsOf = async (count: number, cost: number) => {
    const turns: (readonly number[])[] = [];
    const measure = (thing: number) => {
      now += cost;
      return thing % 5 === 4 ? null : thing;
    };
    const all = inTurns(Array.from({ length: count }).keys(), measure, (some) => void turns.push(some));
    const atOnce = turns.length;
    await all;
    return { turns, atOnce };
  };

  it("takes what fits into one turn at once, measured before anything is changed", async () => {
    expect(await turnsOf(4, 0.1)).toEqual({ turns: [[0, 1, 2, 3]], atOnce: 1 });
  });

  it("lets the page breathe between turns, leaves none out, and drops what has no measure", async () => {
    expect(await turnsOf(6, 1)).toEqual({ turns: [[0, 1], [2, 3], [5]], atOnce: 1 });
  });

  it("takes one at a time however long that is", async () => {
    expect(await turnsOf(3, 50)).toEqual({ turns: [[0], [1], [2]], atOnce: 1 });
  });

  it("tells of what breaks and goes on with the others", async () => {
    const told: unknown[] = [];
    vi.stubGlobal("reportError", (error: unknown) => told.push(error));
    const changed: number[] = [];
    const measure = (thing: number) => {
      now += 1;
      if (thing === 1) throw "measure";
      return thing;
    };
    await inTurns([0, 1, 2, 3, 4, 5], measure, (some) => {
      if (some.includes(2)) throw "change";
      changed.push(...some);
    });
    expect(changed).toEqual([0, 4, 5]);
    expect(told).toEqual(["measure", "change"]);
  });

  it("has nothing to do where there is nothing", async () => {
    expect(await turnsOf(0, 1)).toEqual({ turns: [], atOnce: 0 });
  });
});
