/** Longest wait for a page to finish loading, in milliseconds; some never do. */
const PATIENCE = 2_000;

/**
 * Resolves once a page has loaded and has nothing urgent to do: adding elements to a page whose framework still takes
 * over its markup would break that.
 */
export async function whenCalm(document: Document): Promise<void> {
  if (document.readyState !== "complete") {
    await new Promise((loaded) => {
      addEventListener("load", loaded, { once: true });
      setTimeout(loaded, PATIENCE);
    });
  }
  await new Promise((idle) => requestIdleCallback(idle, { timeout: PATIENCE }));
}
