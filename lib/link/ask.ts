import { isReplyEnvelope, type RequestEnvelope } from "./envelope.ts";
import type { AskWorker, WorkerRequestName, WorkerRequests } from "./messages.ts";

/** Waits in ms before asking again: a worker that just died needs about this long to come back (measured). */
export const RETRY_WAITS_MS = [100, 400] as const;

/** The worker answered, and its answer was no. The message is fit to be shown. */
export class RefusedError extends Error {}

/** The extension was updated or removed under a running page: nothing can be asked any more. */
export class GoneError extends Error {
  constructor() {
    super("Hueward was updated. Reload this page to go on.");
  }
}

const isGone = (error: unknown): boolean => String(error).includes("Extension context invalidated");

/**
 * Makes the function that asks the worker. Every request is safe to repeat, so that a worker which died on the way
 * is simply asked again.
 * @param send hands a message to the worker, `browser.runtime.sendMessage` in product
 * @param wait resolves after so many ms
 * @throws RefusedError with the worker's sentence; GoneError after an update; Error when no answer came
 */
export function createAsk(
  send: (message: RequestEnvelope) => Promise<unknown>,
  wait: (ms: number) => Promise<void>,
): AskWorker {
  return async <N extends WorkerRequestName>(name: N, request: WorkerRequests[N]["request"]) => {
    for (const pause of [...RETRY_WAITS_MS, null]) {
      try {
        const reply = await send({ to: "worker", ask: name, request });
        // The worker is this extension's own code and built its value from checked data; only the envelope is checked.
        if (isReplyEnvelope(reply)) {
          if (reply.ok) return reply.value as WorkerRequests[N]["reply"];
          throw new RefusedError(reply.error);
        }
      } catch (error) {
        if (error instanceof RefusedError) throw error;
        if (isGone(error)) throw new GoneError();
      }
      if (pause !== null) await wait(pause);
    }
    throw new Error("Hueward did not answer. Try again in a moment.");
  };
}
