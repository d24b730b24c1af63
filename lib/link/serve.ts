import * as v from "valibot";
import type { ReplyEnvelope } from "./envelope.ts";
import { PAGE_REQUESTS, type WorkerRequestName, type WorkerRequests } from "./messages.ts";
import { requestSchemas } from "./request-schemas.ts";

/** What the browser says of whoever sent a message. */
export interface Sender {
  readonly id?: string | undefined;
  /** Set when a tab's page or its script sent it. */
  readonly tab?: { readonly id?: number | undefined } | undefined;
  /** The frame of that tab. */
  readonly frameId?: number | undefined;
  readonly url?: string | undefined;
}

/** One function per request; may throw an Error whose message is fit to be shown. */
export type Handlers = {
  readonly [N in WorkerRequestName]: (
    request: WorkerRequests[N]["request"],
    sender: Sender,
  ) => Promise<WorkerRequests[N]["reply"]>;
};

const envelopeSchema = v.object({ to: v.literal("worker"), ask: v.string(), request: v.unknown() });

function mayAsk(name: WorkerRequestName, sender: Sender, self: { id: string; origin: string }): boolean {
  if (sender.id !== self.id) return false;
  if (sender.url?.startsWith(`${self.origin}/`)) return true;
  return sender.tab !== undefined && PAGE_REQUESTS.some((allowed) => allowed === name);
}

const isRequestName = (name: string): name is WorkerRequestName => Object.hasOwn(requestSchemas, name);

/**
 * Makes the worker's listener: deny by default, check the sender, then the shape, then answer.
 * @param self the extension's own id and the origin of its pages, without a trailing slash
 * @returns null for a message that is not for the worker, else the answer to send back; never rejects
 */
export function createServer(
  handlers: Handlers,
  self: { readonly id: string; readonly origin: string },
): (message: unknown, sender: Sender) => Promise<ReplyEnvelope> | null {
  const answer = async <N extends WorkerRequestName>(
    name: N,
    request: unknown,
    sender: Sender,
  ): Promise<ReplyEnvelope> => {
    const parsed = v.safeParse(requestSchemas[name], request);
    if (!parsed.success) {
      const at = v.getDotPath(parsed.issues[0]);
      return {
        ok: false,
        error: `Hueward could not read ${at ?? "the request"}: ${parsed.issues[0].message}`,
      };
    }
    try {
      return { ok: true, value: await handlers[name](parsed.output, sender) };
    } catch (error) {
      return { ok: false, error: error instanceof Error ? error.message : String(error) };
    }
  };
  return (message, sender) => {
    const parsed = v.safeParse(envelopeSchema, message);
    if (!parsed.success) return null;
    const { ask, request } = parsed.output;
    if (!isRequestName(ask) || !mayAsk(ask, sender, self)) {
      return Promise.resolve({ ok: false, error: "This request is not answered here." });
    }
    return answer(ask, request, sender);
  };
}
