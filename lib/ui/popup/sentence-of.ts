/** What went wrong, as it is shown. */
export const sentenceOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);
