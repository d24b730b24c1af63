import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

export interface PictureServer {
  readonly port: number;
  /** Every request since the start. */
  readonly seen: IncomingMessage[];
  close(): Promise<void>;
}

/** A server on loopback; any name under .localhost reaches it, so two of them are two sites to a browser. */
export async function openServer(
  answer: (path: string, response: ServerResponse) => void,
): Promise<PictureServer> {
  const seen: IncomingMessage[] = [];
  const server = createServer((request, response) => {
    seen.push(request);
    answer(request.url ?? "/", response);
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return {
    port: (server.address() as AddressInfo).port,
    seen,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}
