// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { whenCalm } from "../../lib/visit/when-calm.ts";

/** When the page's scripts came, in milliseconds of the page's clock. */
let came: number[] = [];

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("requestIdleCallback", (idle: () => void) => setTimeout(idle));
  vi.spyOn(performance, "getEntriesByType").mockImplementation(() =>
    came.map((responseEnd) => ({ initiatorType: "script", responseEnd }) as PerformanceResourceTiming),
  );
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  came = [];
});

async function calmAfter(ms: number): Promise<boolean> {
  let calm = false;
  void whenCalm(document).then(() => {
    calm = true;
  });
  await vi.advanceTimersByTimeAsync(ms);
  return calm;
}

it("is calm at once where no script came of late", async () => {
  await vi.advanceTimersByTimeAsync(5_000);
  came = [performance.now() - 4_000];
  expect(await calmAfter(10)).toBe(true);
});

it("waits for the pieces that scripts ask for one after the other, but not for ever", async () => {
  came = [performance.now()];
  expect(await calmAfter(200)).toBe(false);
  came.push(performance.now());
  await vi.advanceTimersByTimeAsync(200);
  let calm = false;
  const pieces = setInterval(() => came.push(performance.now()), 100);
  void whenCalm(document).then(() => {
    calm = true;
  });
  await vi.advanceTimersByTimeAsync(1_800);
  expect(calm).toBe(false);
  await vi.advanceTimersByTimeAsync(1_000);
  expect(calm).toBe(true);
  clearInterval(pieces);
});
