// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { type PlainSight, plainSight } from "../../lib/badge/plain-sight.ts";

/** What a browser tells of an element: `isVisible` where it knows whether anything lies over it. */
type Told = { isIntersecting: boolean; isVisible?: boolean };

const CLEAR: Told = { isIntersecting: true, isVisible: true };
const COVERED: Told = { isIntersecting: true, isVisible: false };
const CLOSED: Told = { isIntersecting: false, isVisible: false };

describe("what counts as seen", () => {
  let tell: (entry: Told) => void;
  let asked: unknown;
  let zoom: number | undefined;
  let sight: PlainSight;

  beforeEach(() => {
    vi.useFakeTimers({ now: 10_000, toFake: ["performance"] });
    vi.stubGlobal(
      "IntersectionObserver",
      class {
        constructor(listener: (entries: Told[]) => void, options: unknown) {
          tell = (entry) => listener([entry]);
          asked = options;
        }
        observe() {}
      },
    );
    zoom = 1;
    const element = document.createElement("div");
    Object.defineProperty(element, "currentCSSZoom", { get: () => zoom });
    sight = plainSight(element);
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  const later = (ms: number) => vi.advanceTimersByTime(ms);

  it("is what nothing lies over, as the browser tells, asked as often as it allows", () => {
    expect(asked).toMatchObject({ trackVisibility: true, delay: 100 });
    tell(CLEAR);
    expect(sight.settled()).toBe(true);
    tell(COVERED);
    expect(sight.settled()).toBe(false);
    later(10_000);
    expect(sight.settled()).toBe(false);
  });

  it("is so only half a second after the cover is gone", () => {
    tell(COVERED);
    later(10_000);
    tell(CLEAR);
    later(499);
    expect(sight.settled()).toBe(false);
    later(1);
    expect(sight.settled()).toBe(true);
  });

  it("is so only half a second after it was moved", () => {
    tell(CLEAR);
    sight.moved();
    later(499);
    expect(sight.settled()).toBe(false);
    later(1);
    expect(sight.settled()).toBe(true);
  });

  it("is not what a page has blown up or shrunk until it cannot be read", () => {
    for (const [size, readable] of [
      [0.05, false],
      [0.5, true],
      [1.3, true],
      [30, false],
      [undefined, true],
    ] as const) {
      zoom = size;
      expect(sight.settled(), String(size)).toBe(readable);
    }
  });

  it("is at once what comes into sight anew", () => {
    tell(CLOSED);
    expect(sight.settled()).toBe(true);
    tell(CLEAR);
    expect(sight.settled()).toBe(true);
  });

  it("is taken for granted where the browser cannot tell", () => {
    tell({ isIntersecting: true });
    expect(sight.settled()).toBe(true);
  });
});
