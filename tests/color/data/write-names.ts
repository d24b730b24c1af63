import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/**
 * Writes lib/color/data/iscc-names.ts from `dist/colorlists.json` of npm package color-name-lists 3.33.2:
 * `node tests/color/data/write-names.ts PATH/TO/colorlists.json`.
 */

interface Entry {
  readonly name: string;
  readonly hex: string;
}

const path = process.argv[2];
if (path === undefined)
  throw new Error("Name the file: node tests/color/data/write-names.ts colorlists.json");
const { lists } = JSON.parse(readFileSync(path, "utf8")) as { lists: Record<string, readonly Entry[]> };

/** British spelling; the list's own additions ("…, ultramarine", "… see #115") are cut off. */
function tidy(name: string): string {
  return name
    .toLowerCase()
    .replace(/,.*| see #.*/, "")
    .replaceAll("gray", "grey");
}

const rows = (lists.nbsIscc ?? []).map(({ name, hex }) => `${hex.slice(1)} ${tidy(name)}`).join("|");
const target = fileURLToPath(new URL("../../../lib/color/data/iscc-names.ts", import.meta.url));
writeFileSync(
  target,
  `/**
 * The 267 ISCC-NBS colour names with their centroids: K. L. Kelly, D. B. Judd, "Color: Universal Language and Dictionary of
 * Names", NBS Special Publication 440, 1976 (a work of the US government), as list "nbsIscc", dedicated CC0 1.0, of npm
 * color-name-lists 3.33.2 (https://github.com/meodai/color-name-lists; MIT, none of its code is used). British spelling.
 * Written by tests/color/data/write-names.ts. Each row: rrggbb name.
 */
export const ISCC_NAMES = "${rows}";
`,
);
execFileSync("npx", ["biome", "format", "--write", target], { stdio: "inherit" });
