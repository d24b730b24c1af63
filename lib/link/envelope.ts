import type { WorkerRequestName } from "./messages.ts";

/** How a request travels to the worker. */
export interface RequestEnvelope {
  readonly to: "worker";
  readonly ask: WorkerRequestName;
  readonly request: unknown;
}

/** How the answer travels back: the value, or one plain sentence that says what went wrong. */
export type ReplyEnvelope =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly error: string };

/** True for an object of this shape; anything else is not ours to answer. */
export function isReplyEnvelope(value: unknown): value is ReplyEnvelope {
  if (typeof value !== "object" || value === null || !("ok" in value)) return false;
  if (value.ok === true) return "value" in value;
  return value.ok === false && "error" in value && typeof value.error === "string";
}
