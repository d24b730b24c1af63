import { describe, expect, it } from "vitest";
import { createAsk, GoneError, RETRY_WAITS_MS, RefusedError } from "../../lib/link/ask.ts";

/** A worker that behaves as the browsers were seen to: one behaviour a call. */
function worker(...behaviours: (() => unknown)[]) {
  const seen: unknown[] = [];
  const waits: number[] = [];
  const ask = createAsk(
    async (message) => {
      seen.push(message);
      return behaviours[Math.min(seen.length, behaviours.length) - 1]?.();
    },
    async (ms) => void waits.push(ms),
  );
  return { ask, seen, waits };
}

const dead = () => {
  throw new Error("Could not establish connection. Receiving end does not exist.");
};
const recall = { products: [], pictures: [] };
const nothing = { corrections: {}, palettes: {} };

describe("asking the worker", () => {
  it("hands the value on", async () => {
    const { ask, seen } = worker(() => ({ ok: true, value: nothing }));
    expect(await ask("recall", recall)).toEqual(nothing);
    expect(seen).toEqual([{ to: "worker", ask: "recall", request: recall }]);
  });

  it("asks again when the worker died on the way, whether the browser rejects or resolves with nothing", async () => {
    const { ask, seen, waits } = worker(
      dead,
      () => undefined,
      () => ({ ok: true, value: nothing }),
    );
    expect(await ask("recall", recall)).toEqual(nothing);
    expect(seen).toHaveLength(3);
    expect(waits).toEqual([...RETRY_WAITS_MS]);
  });

  it("gives up in plain words when no answer comes", async () => {
    const { ask, seen } = worker(dead);
    await expect(ask("recall", recall)).rejects.toThrow("Hueward did not answer");
    expect(seen).toHaveLength(RETRY_WAITS_MS.length + 1);
  });

  it("does not ask twice when the answer is no", async () => {
    const { ask, seen } = worker(() => ({ ok: false, error: "Say first where it is worn." }));
    await expect(ask("recall", recall)).rejects.toThrow(RefusedError);
    expect(seen).toHaveLength(1);
  });

  it("says that the page must be reloaded after an update", async () => {
    const { ask, seen } = worker(() => {
      throw new Error("Extension context invalidated.");
    });
    await expect(ask("recall", recall)).rejects.toThrow(GoneError);
    expect(seen).toHaveLength(1);
  });

  it("takes nothing for an answer that is not one", async () => {
    const { ask } = worker(() => ({ ok: "yes", value: nothing }));
    await expect(ask("recall", recall)).rejects.toThrow("Hueward did not answer");
  });
});
