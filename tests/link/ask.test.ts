import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { ANSWER_LIMIT_MS, createAsk, GoneError, RETRY_WAITS_MS, RefusedError } from "../../lib/link/ask.ts";
import { PICTURE_TIMEOUT } from "../../lib/pixels/fetch-picture.ts";

/** A worker that behaves as the browsers were seen to: one behaviour a call, the last one again and again. */
function worker(...behaviours: (() => unknown)[]) {
  const seen: unknown[] = [];
  const times: number[] = [];
  const ask = createAsk(async (message) => {
    seen.push(message);
    times.push(Date.now());
    return behaviours[Math.min(seen.length, behaviours.length) - 1]?.();
  });
  return { ask, seen, times };
}

const dead = () => {
  throw new Error("Could not establish connection. Receiving end does not exist.");
};
const silent = () => new Promise(() => {});
const answering = () => ({ ok: true, value: nothing });
const recall = { products: [], pictures: [] };
const nothing = { slots: {}, corrections: {}, palettes: {} };

/** Lets all of the time pass that anybody waits for; what the request came to is told, a failure by its error. */
async function outcome(asked: Promise<unknown>): Promise<unknown> {
  const told = asked.catch((error: unknown) => error);
  await vi.runAllTimersAsync();
  return told;
}

describe("asking the worker", () => {
  beforeEach(() => {
    vi.useFakeTimers({ now: 0 });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it("hands the value on", async () => {
    const { ask, seen } = worker(answering);
    expect(await outcome(ask("recall", recall))).toEqual(nothing);
    expect(seen).toEqual([{ to: "worker", ask: "recall", request: recall }]);
  });

  it("asks again when the worker died on the way, whether the browser rejects or resolves with nothing", async () => {
    const { ask, times } = worker(dead, () => undefined, answering);
    expect(await outcome(ask("recall", recall))).toEqual(nothing);
    const [first, second] = RETRY_WAITS_MS;
    expect(times).toEqual([0, first, first + second]);
  });

  it("gives up in plain words when no answer comes", async () => {
    const { ask, seen } = worker(dead);
    expect(String(await outcome(ask("recall", recall)))).toContain("Hueward did not answer");
    expect(seen).toHaveLength(RETRY_WAITS_MS.length + 1);
  });

  it("asks again when the worker keeps silent, and takes the second answer", async () => {
    const { ask, seen, times } = worker(silent, answering);
    expect(await outcome(ask("recall", recall))).toEqual(nothing);
    expect(seen).toEqual(Array(2).fill({ to: "worker", ask: "recall", request: recall }));
    expect(times).toEqual([0, ANSWER_LIMIT_MS + RETRY_WAITS_MS[0]]);
  });

  it("gives up on a worker that stays silent", async () => {
    const { ask, seen } = worker(silent);
    expect(String(await outcome(ask("recall", recall)))).toContain("Hueward did not answer");
    expect(seen).toHaveLength(RETRY_WAITS_MS.length + 1);
  });

  it("waits for the slowest honest answer, a picture that takes as long as it may", async () => {
    const slow = () => new Promise((done) => setTimeout(() => done(answering()), PICTURE_TIMEOUT + 4_000));
    const { ask, seen } = worker(slow);
    expect(await outcome(ask("recall", recall))).toEqual(nothing);
    expect(seen).toHaveLength(1);
  });

  it("takes no notice of an answer that comes after the second one", async () => {
    const late = () =>
      new Promise((done) => setTimeout(() => done({ ok: false, error: "Too late." }), ANSWER_LIMIT_MS + 50));
    const { ask } = worker(late, answering);
    expect(await outcome(ask("recall", recall))).toEqual(nothing);
  });

  it("does not ask twice when the answer is no", async () => {
    const { ask, seen } = worker(() => ({ ok: false, error: "Say first where it is worn." }));
    expect(await outcome(ask("recall", recall))).toBeInstanceOf(RefusedError);
    expect(seen).toHaveLength(1);
  });

  it("says that the page must be reloaded after an update", async () => {
    const { ask, seen } = worker(() => {
      throw new Error("Extension context invalidated.");
    });
    expect(await outcome(ask("recall", recall))).toBeInstanceOf(GoneError);
    expect(seen).toHaveLength(1);
  });

  it("takes nothing for an answer that is not one", async () => {
    const { ask } = worker(() => ({ ok: "yes", value: nothing }));
    expect(String(await outcome(ask("recall", recall)))).toContain("Hueward did not answer");
  });
});
