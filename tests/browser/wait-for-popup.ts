/** How long a step of the popup may take before the test fails; ms. Generous: it only bounds a failure. */
const POPUP_WAIT_MS = 30_000;
const POLL_MS = 50;

/** Looks again until `look` gives something; `problem` says what did not come. */
export async function waitForPopup<T>(
  look: () => Promise<T | null | undefined | false>,
  problem: () => string | Promise<string>,
): Promise<T> {
  const end = Date.now() + POPUP_WAIT_MS;
  for (;;) {
    const seen = await look();
    if (seen) return seen;
    if (Date.now() > end) throw new Error(await problem());
    await new Promise((done) => setTimeout(done, POLL_MS));
  }
}

/** What to say where an expression never became truthy in a popup that shows these words. */
export const neverCame = (expression: string, words: string): string =>
  `The popup never came to ${expression}. It shows:\n${words}`;
