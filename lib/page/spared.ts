/** Does one of many things; where it breaks, the browser's console is told and the others are spared. */
export function spared<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    reportError(error);
    return undefined;
  }
}
