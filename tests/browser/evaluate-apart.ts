import type { Page } from "playwright-core";

/**
 * The JSON value of an expression, awaited, in a world of its own beside the page's: what the page has made of the
 * language or of elements does not count there, as it does not for an extension.
 */
export async function evaluateApart<T>(page: Page, expression: string): Promise<T> {
  const session = await page.context().newCDPSession(page);
  try {
    const { frameTree } = await session.send("Page.getFrameTree");
    const { executionContextId } = await session.send("Page.createIsolatedWorld", {
      frameId: frameTree.frame.id,
    });
    const { result, exceptionDetails } = await session.send("Runtime.evaluate", {
      expression,
      contextId: executionContextId,
      awaitPromise: true,
      returnByValue: true,
    });
    if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
    return result.value;
  } finally {
    await session.detach();
  }
}
