import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { atMost } from "../../lib/visit/at-most.ts";
import { BATCH, batched } from "../../lib/visit/batched.ts";
import { inSlices, SLICE } from "../../lib/visit/in-slices.ts";

describe("batched", () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it("asks once for all that comes within the wait and hands back each its answer", async () => {
    const ask = vi.fn(async (items: readonly number[]) => items.map((item) => item * 10));
    const one = batched(ask, 20);
    const answers = Promise.all([one(1), one(2), one(3)]);
    await vi.advanceTimersByTimeAsync(20);
    expect(await answers).toEqual([10, 20, 30]);
    const late = one(4);
    await vi.advanceTimersByTimeAsync(20);
    expect(await late).toBe(40);
    expect(ask.mock.calls).toEqual([[[1, 2, 3]], [[4]]]);
  });

  it("never asks for more than the worker takes at once, and leaves none out", async () => {
    const ask = vi.fn(async (items: readonly number[]) => items);
    const one = batched(ask, 20);
    const items = Array.from({ length: 2 * BATCH + 1 }, (_, n) => n);
    const answers = Promise.all(items.map(one));
    await vi.advanceTimersByTimeAsync(100);
    expect(await answers).toEqual(items);
    expect(ask.mock.calls.map(([batch]) => batch.length)).toEqual([BATCH, BATCH, 1]);
  });

  it("rejects for all of a batch that failed, and for what got no answer", async () => {
    const one = batched(async (items: readonly string[]) => {
      if (items.includes("bad")) throw new Error("no");
      return items.slice(1);
    }, 20);
    const failed = Promise.allSettled([one("bad"), one("good")]);
    await vi.advanceTimersByTimeAsync(20);
    expect((await failed).map(({ status }) => status)).toEqual(["rejected", "rejected"]);
    const short = Promise.allSettled([one("a"), one("b")]);
    await vi.advanceTimersByTimeAsync(20);
    expect((await short).map(({ status }) => status)).toEqual(["fulfilled", "rejected"]);
  });
});

describe("atMost", () => {
  it("runs no more at a time than allowed, all in the end, in order", async () => {
    const few = atMost(3);
    let running = 0;
    let most = 0;
    const order: number[] = [];
    const works = Array.from({ length: 10 }, (_, n) =>
      few(async () => {
        order.push(n);
        most = Math.max(most, ++running);
        await Promise.resolve();
        running -= 1;
        return n;
      }),
    );
    expect(await Promise.all(works)).toEqual(order);
    expect(most).toBe(3);
  });

  it("gives the turn on when a work fails", async () => {
    const one = atMost(1);
    const failed = one(async () => {
      throw new Error("no");
    });
    const next = one(async () => "next");
    await expect(failed).rejects.toThrow("no");
    expect(await next).toBe("next");
  });
});

describe("inSlices", () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });

  /** Works for so many ms a step on a clock that only work moves. */
  function worker(steps: number, cost: number) {
    let now = 0;
    let sliceStart = 0;
    let longest = 0;
    vi.spyOn(performance, "now").mockImplementation(() => now);
    function* work(): Generator<undefined, string, undefined> {
      for (let step = 0; step < steps; step++) {
        now += cost;
        longest = Math.max(longest, now - sliceStart);
        yield;
      }
      return "done";
    }
    const breaths = vi.spyOn(globalThis, "setTimeout").mockImplementation(((next: () => void) => {
      sliceStart = now;
      queueMicrotask(next);
      return 0;
    }) as unknown as typeof setTimeout);
    return { work: work(), breaths, longest: () => longest };
  }

  it("pauses before a slice grows longer than allowed by more than one step", async () => {
    const { work, breaths, longest } = worker(100, 1);
    expect(await inSlices(work, new AbortController().signal)).toBe("done");
    expect(longest()).toBeLessThanOrEqual(SLICE + 1);
    expect(breaths.mock.calls.length).toBeGreaterThanOrEqual(100 / (SLICE + 1));
  });

  it("waits for what the work yields", async () => {
    const order: string[] = [];
    function* work(): Generator<Promise<void> | undefined, string, undefined> {
      yield Promise.resolve().then(() => void order.push("arrived"));
      order.push("went on");
      return "done";
    }
    expect(await inSlices(work(), new AbortController().signal)).toBe("done");
    expect(order).toEqual(["arrived", "went on"]);
  });

  it("ends with the visit", async () => {
    const ended = new AbortController();
    const { work } = worker(100, SLICE);
    const running = inSlices(work, ended.signal);
    ended.abort();
    await expect(running).rejects.toThrow();
  });
});
