import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, resolve, sep } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".htm": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".jpeg": "image/jpeg",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".gif": "image/gif",
};

/** The path that an address asks for; "" where it is no path. */
function pathOf(address: string): string {
  try {
    return decodeURIComponent(address.replace(/[?#].*/, ""));
  } catch {
    return "";
  }
}

/** Serves the files of a folder, and of no other, to this machine only: a page kept as a file then has a web address. */
export async function serveFolder(folder: string): Promise<{ url: string; close: () => Promise<void> }> {
  const root = resolve(folder);
  const server = createServer((request, response) => {
    const file = resolve(join(root, pathOf(request.url ?? "")));
    if (!file.startsWith(root + sep) || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {
      "content-type": TYPES[extname(file).toLowerCase()] ?? "application/octet-stream",
    });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  return {
    url: `http://page.localhost:${(server.address() as AddressInfo).port}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        // A browser keeps its connections open for minutes.
        server.closeAllConnections();
      }),
  };
}
