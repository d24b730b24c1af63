import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";

const CHROMIUM = ".output/chrome-mv3";
const FIREFOX = ".output/firefox-mv3";
const manifestOf = (folder: string) => JSON.parse(readFileSync(join(folder, "manifest.json"), "utf8"));
const gzipped = (file: string) => gzipSync(readFileSync(file), { level: 9 }).length;

describe.each([CHROMIUM, FIREFOX])("the manifest in %s", (folder) => {
  const manifest = manifestOf(folder);

  it("asks for these permissions at install and for no host", () => {
    expect(manifest.permissions).toEqual(["activeTab", "scripting", "storage", "unlimitedStorage"]);
    expect(manifest.optional_host_permissions).toEqual(["*://*/*"]);
    expect(manifest).not.toHaveProperty("host_permissions");
    expect(manifest).not.toHaveProperty("optional_permissions");
  });

  it("runs nothing by itself and shows nothing of itself to a page", () => {
    expect(manifest).not.toHaveProperty("content_scripts");
    expect(manifest).not.toHaveProperty("web_accessible_resources");
    expect(manifest).not.toHaveProperty("externally_connectable");
  });
});

it("declares for Firefox that no data is collected", () => {
  const { gecko } = manifestOf(FIREFOX).browser_specific_settings;
  expect(gecko.data_collection_permissions).toEqual({ required: ["none"] });
});

/** Ceilings in bytes, gzip level 9: the page script's is well below the 12 kB promised; the background's keeps start-up quick. */
const CEILINGS = { visit: 8 * 1024, background: 42 * 1024 } as const;

it("ships the licence of every library in it", () => {
  const text = readFileSync(join(CHROMIUM, "licences.txt"), "utf8");
  const { dependencies } = JSON.parse(readFileSync("package.json", "utf8"));
  for (const name of Object.keys(dependencies)) expect(text).toContain(`${name}\n`);
  expect(text).toContain("Apache License");
  expect(text.match(/Permission is hereby granted/g)?.length).toBeGreaterThanOrEqual(3);
});

describe("the size of what is shipped", () => {
  it.each(Object.entries(CEILINGS))("%s.js stays under %i bytes", (name, most) => {
    expect(gzipped(join(CHROMIUM, `${name}.js`))).toBeLessThanOrEqual(most);
  });

  it("holds no source map and nothing of the tests", () => {
    const files = readdirSync(CHROMIUM, { recursive: true, encoding: "utf8" });
    expect(files.filter((file) => /\.map$|test|fixture/i.test(file))).toEqual([]);
  });
});
