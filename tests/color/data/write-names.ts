import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { everydayTerm } from "../../../lib/color/everyday-term.ts";
import { parseColor } from "../../../lib/color/parse-color.ts";
import { COLOR_TERMS, type ColorTerm } from "../../../lib/words/color-term.ts";
import { CAUS_FABRICS } from "../facts/caus-fabrics.ts";
import { isMuddled, isPleasant } from "./is-pleasant.ts";

/**
 * Writes lib/color/data/*.ts from `dist/colorlists.json` of npm package color-name-lists 3.33.2:
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

/** Biome sets the rows; the comment names the source. */
function write(file: string, comment: string, code: string): void {
  const target = fileURLToPath(new URL(`../../../lib/color/data/${file}`, import.meta.url));
  const lines = comment.trim().split("\n");
  writeFileSync(
    target,
    `/**\n${lines.map((line) => ` * ${line.trim()}`).join("\n")}\n */\nexport const ${code};\n`,
  );
  execFileSync("npx", ["biome", "format", "--write", target], { stdio: "inherit" });
}

function rowsOf(entries: readonly Entry[]): string {
  return entries.map(({ name, hex }) => `${hex.slice(1)} ${name}`).join("|");
}

/** Words in a survey name that say a term, where they are not the term itself. */
const SAYS: Readonly<Record<string, ColorTerm>> = { violet: "purple" };

/** The last colour term that a name says; null for "salmon". */
function saidTerm(name: string): ColorTerm | null {
  const said = name.split(" ").map((word) => SAYS[word] ?? COLOR_TERMS.find((one) => one === word) ?? null);
  return said.findLast((one) => one !== null) ?? null;
}

/** Whether a name may stand for a term: its colour has that term or it says it, and the two do not contradict each other. */
function standsFor(term: ColorTerm, { name, hex }: Entry): boolean {
  const seen = everydayTerm(parseColor(hex));
  const said = saidTerm(name) ?? seen;
  const akin = familyOf(seen).includes(said) || familyOf(said).includes(seen);
  return akin && (seen === term || said === term);
}

/** Terms that are, to most people, kinds of another. Common practice, no source. */
const KIND_OF: Readonly<Partial<Record<ColorTerm, readonly ColorTerm[]>>> = {
  beige: ["brown"],
  burgundy: ["red", "purple"],
  camel: ["brown", "beige", "khaki", "mustard"],
  coral: ["pink", "orange", "red"],
  cream: ["white", "yellow", "beige"],
  fuchsia: ["pink", "purple"],
  khaki: ["green"],
  lavender: ["purple"],
  mint: ["green"],
  mustard: ["yellow"],
  navy: ["blue"],
  olive: ["green"],
  peach: ["orange", "pink"],
  rust: ["brown", "orange", "red"],
  teal: ["green", "blue"],
  turquoise: ["blue", "green"],
};

function familyOf(term: ColorTerm): readonly ColorTerm[] {
  return [term, ...(KIND_OF[term] ?? [])];
}

write(
  "iscc-names.ts",
  `The 267 ISCC-NBS colour names with their centroids: K. L. Kelly, D. B. Judd, "Color: Universal Language and Dictionary of
  Names", NBS Special Publication 440, 1976 (a work of the US government), as carried by npm color-name-lists 3.33.2
  (MIT; list dedicated CC0 1.0). Written by tests/color/data/write-names.ts. Each row: rrggbb name.`,
  `ISCC_NAMES = "${rowsOf((lists.nbsIscc ?? []).map(({ name, hex }) => ({ name: tidy(name), hex })))}"`,
);

const fabrics = CAUS_FABRICS.filter(({ basic, name }) => !basic && name !== "gold");

/** Whether the fabrics called so have another term than the screen colour called so: the fabrics are right about cloth. */
function isOverruled({ name, hex }: Entry): boolean {
  const fabric = fabrics.find((one) => one.name === name);
  return fabric !== undefined && everydayTerm(parseColor(fabric.hex)) !== everydayTerm(parseColor(hex));
}

const greys = ["Light Gray", "Dark Gray"];
const named = [
  ...(lists.xkcd ?? []).filter(
    (entry) => isPleasant(entry.name) && !isMuddled(entry.name) && !isOverruled(entry),
  ),
  ...(lists.nbsIscc ?? [])
    .filter(({ name }) => greys.includes(name))
    .map(({ name, hex }) => ({ name: tidy(name), hex })),
  ...fabrics,
];
const groups = COLOR_TERMS.flatMap((term) => {
  const own = named.filter((entry) => standsFor(term, entry));
  return own.length === 0 ? [] : [`${term}: "${rowsOf(own)}"`];
});
write(
  "everyday-names.ts",
  `Everyday colour names by the term their colour has: the XKCD colour survey (R. Munroe, 2010), dedicated to the public domain
  (CC0 1.0), as carried by npm color-name-lists 3.33.2 (MIT), without crude, odd or contradictory names; the two greys between
  from ISCC-NBS (as in iscc-names.ts); and 19 names of fabrics from P. Centore, "Beige, aqua, fuchsia, etc.: Definitions for some
  non-basic surface colour names", JAIC 25:24–54, 2020, Table 1. Written by tests/color/data/write-names.ts.
  Each row: rrggbb name.`,
  `EVERYDAY_NAMES = {${groups.join(",")}}`,
);
