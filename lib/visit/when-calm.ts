/** Longest wait for a page to finish loading, and then for its scripts, in milliseconds; some never do. */
const PATIENCE = 2_000;

/**
 * How long no script must have come, in milliseconds: code that takes over a page's markup often comes in pieces, each
 * asking for the next (our choice).
 */
const QUIET = 300;

const after = (ms: number) => new Promise((done) => setTimeout(done, ms));

/**
 * Resolves once a page has loaded, its scripts have come and it has nothing urgent to do: adding elements to a page whose
 * framework still takes over its markup would break that.
 */
export async function whenCalm(document: Document): Promise<void> {
  if (document.readyState !== "complete") {
    await new Promise<unknown>((loaded) => {
      const timer = setTimeout(loaded, PATIENCE);
      addEventListener("load", () => loaded(clearTimeout(timer)), { once: true });
    });
  }
  const end = performance.now() + PATIENCE;
  for (let wait = 1; wait > 0 && performance.now() < end; wait = lastScript() + QUIET - performance.now()) {
    await after(wait);
    await new Promise((idle) => requestIdleCallback(idle, { timeout: PATIENCE }));
  }
}

/** When the page's last script had come, in milliseconds of its own clock; 0 where none has. */
function lastScript(): number {
  const resources = performance.getEntriesByType("resource") as PerformanceResourceTiming[];
  const scripts = resources.filter(({ initiatorType }) => initiatorType === "script");
  return Math.max(0, ...scripts.map(({ responseEnd }) => responseEnd));
}
