import { mkdtempSync, writeFileSync } from "node:fs";
import { get } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { serveFolder } from "./serve-folder.ts";

/** The status of a path as it is written; `fetch` would tidy it first. */
const statusOf = (url: string, path: string): Promise<number | undefined> =>
  new Promise((done, failed) => {
    const { port } = new URL(url);
    get({ host: "127.0.0.1", port, path }, (response) => {
      response.resume();
      done(response.statusCode);
    }).on("error", failed);
  });

it("serves the files of its folder and no others", async () => {
  const outer = mkdtempSync(join(tmpdir(), "folder-"));
  const inner = mkdtempSync(join(outer, "inner-"));
  writeFileSync(join(outer, "secret.html"), "secret");
  writeFileSync(join(inner, "my page.html"), "<p>page</p>");
  const folder = await serveFolder(inner);
  try {
    expect(await statusOf(folder.url, "/my%20page.html")).toBe(200);
    expect(await statusOf(folder.url, "/../secret.html")).toBe(404);
    expect(await statusOf(folder.url, "/%2e%2e%2fsecret.html")).toBe(404);
    expect(await statusOf(folder.url, "/")).toBe(404);
    expect(await statusOf(folder.url, "/%")).toBe(404);
  } finally {
    await folder.close();
  }
});
