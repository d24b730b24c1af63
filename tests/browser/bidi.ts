/** A command that the browser turned down, in its own words. */
export class BidiError extends Error {}

/** A conversation with a browser in WebDriver BiDi (W3C), one JSON message at a time. */
export interface Bidi {
  /** Sends one command and resolves with its result. Throws BidiError; also when the conversation ends first. */
  send<T = unknown>(method: string, params?: object): Promise<T>;
  close(): void;
}

interface Answer {
  readonly id?: number | null;
  readonly type: "success" | "error" | "event";
  readonly result?: unknown;
  readonly error?: string;
  readonly message?: string;
}

interface Waiting {
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: BidiError) => void;
}

/** Opens a session at the address that the browser printed, `ws://127.0.0.1:PORT`. */
export async function openBidi(address: string): Promise<Bidi> {
  const socket = new WebSocket(`${address}/session`);
  await new Promise<void>((opened, failed) => {
    socket.addEventListener("open", () => opened());
    socket.addEventListener("error", () => failed(new BidiError(`${address} does not answer.`)));
  });
  const waiting = new Map<number, Waiting>();
  let last = 0;
  socket.addEventListener("message", ({ data }) => {
    const { id, type, result, error, message } = JSON.parse(String(data)) as Answer;
    const asked = waiting.get(id ?? 0);
    waiting.delete(id ?? 0);
    if (type === "success") asked?.resolve(result);
    else asked?.reject(new BidiError(`${error}: ${message}`));
  });
  socket.addEventListener("close", () => {
    for (const { reject } of waiting.values()) reject(new BidiError("The browser ended the conversation."));
    waiting.clear();
  });
  const send = <T>(method: string, params: object = {}) =>
    new Promise<T>((resolve, reject) => {
      last += 1;
      waiting.set(last, { resolve: (result) => resolve(result as T), reject });
      socket.send(JSON.stringify({ id: last, method, params }));
    });
  await send("session.new", { capabilities: {} });
  return { send, close: () => socket.close() };
}
