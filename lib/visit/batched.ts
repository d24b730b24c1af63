/** Most items in one request: the worker turns larger ones down. */
export const BATCH = 200;

/** Gathers what is asked within `wait` milliseconds and asks it at once; answers come back one by one, in order. */
export function batched<I, O>(ask: (items: readonly I[]) => Promise<readonly O[]>, wait: number) {
  const gathered: { item: I; resolve: (answer: O) => void; reject: (reason: unknown) => void }[] = [];

  const flush = async () => {
    const batch = gathered.splice(0, BATCH);
    if (gathered.length) setTimeout(flush, wait);
    try {
      const answers = await ask(batch.map(({ item }) => item));
      batch.forEach(({ resolve, reject }, index) => {
        const answer = answers[index];
        if (answer === undefined) reject(new Error("Hueward did not answer. Try again in a moment."));
        else resolve(answer);
      });
    } catch (error) {
      for (const { reject } of batch) reject(error);
    }
  };

  return (item: I): Promise<O> =>
    new Promise((resolve, reject) => {
      gathered.push({ item, resolve, reject });
      if (gathered.length === 1) setTimeout(flush, wait);
    });
}
