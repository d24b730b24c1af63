import { isReplyEnvelope, type RequestEnvelope } from "./envelope.ts";
import type { AskWorker, WorkerRequestName, WorkerRequests } from "./messages.ts";

/** Waits in ms before asking again: a worker that just died needs about this long to come back (measured). */
export const RETRY_WAITS_MS = [100, 400] as const;

/**
 * Longest wait for one answer, ms; after it the request counts as lost. The slowest honest answer is a picture: at most
 * 8 s to fetch it (`PICTURE_TIMEOUT`), then reading it on a busy machine. A browser as a rule says at once that a worker
 * died; the limit is for when it does not, since whoever waits for a picture keeps others from theirs.
 */
export const ANSWER_LIMIT_MS = 15_000;

/** The worker answered, and its answer was no. The message is fit to be shown. */
export class RefusedError extends Error {}

/** The extension was updated or removed under a running page: nothing can be asked any more. */
export class GoneError extends Error {
  constructor() {
    super("Hueward was updated. Reload this page to go on.");
  }
}

const isGone = (error: unknown): boolean => String(error).includes("Extension context invalidated");

const after = (ms: number) => new Promise((done) => setTimeout(done, ms));

/** The answer, or nothing where it does not come within `ANSWER_LIMIT_MS`. */
async function inTime(answer: Promise<unknown>): Promise<unknown> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const silence = new Promise<void>((done) => {
    timer = setTimeout(done, ANSWER_LIMIT_MS);
  });
  try {
    return await Promise.race([answer, silence]);
  } finally {
    clearTimeout(timer);
  }
}

/**
 * Makes the function that asks the worker. Every request is safe to repeat, so that a worker which died on the way,
 * or keeps silent for `ANSWER_LIMIT_MS`, is simply asked again.
 * @param send hands a message to the worker, `browser.runtime.sendMessage` in product
 * @throws RefusedError with the worker's sentence; GoneError after an update; Error when no answer came
 */
export function createAsk(send: (message: RequestEnvelope) => Promise<unknown>): AskWorker {
  return async <N extends WorkerRequestName>(name: N, request: WorkerRequests[N]["request"]) => {
    for (const pause of [...RETRY_WAITS_MS, null]) {
      try {
        const reply = await inTime(send({ to: "worker", ask: name, request }));
        // The worker is this extension's own code and built its value from checked data; only the envelope is checked.
        if (isReplyEnvelope(reply)) {
          if (reply.ok) return reply.value as WorkerRequests[N]["reply"];
          throw new RefusedError(reply.error);
        }
      } catch (error) {
        if (error instanceof RefusedError) throw error;
        if (isGone(error)) throw new GoneError();
      }
      if (pause !== null) await after(pause);
    }
    throw new Error("Hueward did not answer. Try again in a moment.");
  };
}
