import { readFileSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { PICTURES, picturePath } from "./catalogue.ts";
import { type Answer, answerShop } from "./pages/answer-shop.ts";
import { storePictures } from "./store-pictures.ts";

/** A request that reached the store. */
export interface StoreRequest {
  /** As the browser named it, such as `cdn.localhost:4801`. */
  readonly host: string;
  readonly method: string;
  readonly path: string;
  readonly headers: IncomingMessage["headers"];
}

/** A running store. */
export interface Store {
  readonly shopUrl: string;
  readonly cdnUrl: string;
  /** Every request so far, in order of arrival, to shop and image host alike. */
  readonly requests: readonly StoreRequest[];
  close(): Promise<void>;
}

/** How long a browser may keep a picture: a day, as an image host says. */
const PICTURE_AGE = "public, max-age=86400";

/** A picture of the catalogue; `/media` for every site, `/photos` for this shop's pages only. */
function answerPicture(folder: string, path: string): Answer {
  const picture = PICTURES.find((known) => picturePath(known) === path);
  if (!picture) return { status: 404, type: "text/plain; charset=utf-8", body: "No such picture" };
  return {
    status: 200,
    type: "image/jpeg",
    body: readFileSync(join(folder, `${picture.id}.jpg`)),
    headers: {
      "cache-control": PICTURE_AGE,
      ...(picture.cors ? { "access-control-allow-origin": "*" } : {}),
    },
  };
}

function send(response: ServerResponse, head: boolean, { status, type, body, headers }: Answer): void {
  response.writeHead(status, {
    "content-type": type,
    "content-length": Buffer.byteLength(body),
    "cache-control": "no-cache",
    ...headers,
  });
  response.end(head ? undefined : body);
}

async function listen(server: Server, port: number): Promise<number> {
  await new Promise<void>((done, failed) => {
    server.once("error", failed).listen(port, "127.0.0.1", done);
  });
  return (server.address() as AddressInfo).port;
}

async function stop(server: Server): Promise<void> {
  server.closeAllConnections();
  await new Promise<void>((done) => {
    server.close(() => done());
  });
}

/**
 * Opens the invented store on loopback: pages on `shop.localhost`, pictures on `cdn.localhost`, two sites to a browser.
 * Takes its pictures first where they are missing. Ports are free ones unless given. Rejects where a port is taken.
 */
export async function startStore(ports: { port?: number; cdnPort?: number } = {}): Promise<Store> {
  const folder = await storePictures();
  const requests: StoreRequest[] = [];
  const serve = (answer: (url: URL) => Answer): Server =>
    createServer((request, response) => {
      const { method = "GET", url: path = "/", headers } = request;
      const host = headers.host ?? "";
      requests.push({ host, method, path, headers });
      if (method !== "GET" && method !== "HEAD")
        return send(response, false, {
          status: 405,
          type: "text/plain",
          body: "",
          headers: { allow: "GET, HEAD" },
        });
      send(response, method === "HEAD", answer(new URL(path, "http://store.invalid")));
    });

  const cdn = serve((url) => answerPicture(folder, url.pathname));
  const cdnUrl = `http://cdn.localhost:${await listen(cdn, ports.cdnPort ?? 0)}`;
  const addresses = { shopUrl: "", cdnUrl };
  const shop = serve((url) => answerShop(url, addresses));
  addresses.shopUrl = `http://shop.localhost:${await listen(shop, ports.port ?? 0)}`;
  return {
    ...addresses,
    requests,
    close: async () => {
      await Promise.all([stop(shop), stop(cdn)]);
    },
  };
}
