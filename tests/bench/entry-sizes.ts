import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

/** Bytes of every built script and style sheet after gzip at its best. */
export function entrySizes(built: string): Record<string, number> {
  const files = readdirSync(built, { recursive: true, encoding: "utf8" }).filter((file) =>
    /\.(?:js|css)$/.test(file),
  );
  return Object.fromEntries(
    files.sort().map((file) => [file, gzipSync(readFileSync(join(built, file)), { level: 9 }).length]),
  );
}
