// `npm run --silent scan -- [--closet FILE] [--wait MS] [--explain] URL…`: one JSON line per page, as the built
// extension sees it. A page may be a file: its folder is then served on this machine.
import { existsSync, readFileSync, statSync } from "node:fs";
import { basename, dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { readClosetFile } from "../../lib/closet/closet-file.ts";
import type { ExplainedVerdict, SummaryProduct } from "../../lib/link/messages.ts";
import { buildExtension } from "../browser/build-extension.ts";
import { ensureChromium } from "../browser/ensure-chromium.ts";
import { importCloset } from "../browser/import-closet.ts";
import { openExtension } from "../browser/open-extension.ts";
import { type ScannedPage, scanPage } from "../browser/scan-page.ts";
import { serveFolder } from "../browser/serve-folder.ts";
import { swatchLine } from "./swatch-line.ts";

/** How long reading one page may take where nothing else is asked for; ms. */
const WAIT_MS = 30_000;

const USAGE = "Usage: npm run --silent scan -- [--closet FILE] [--wait MS] [--explain] URL…";

/** A verdict with pieces by name, as it is printed. */
function verdictLine({ verdict, pieces }: ExplainedVerdict) {
  const nameOf = (id: string) => pieces[id]?.name ?? id;
  return {
    headline: verdict.headline,
    duplicates: verdict.duplicates.map(({ pieceId, deltaE2000 }) => ({ piece: nameOf(pieceId), deltaE2000 })),
    pieces: verdict.pieces.map(({ pieceId, relation, alternatives, deltaE2000 }) => ({
      piece: nameOf(pieceId),
      relation,
      alternatives,
      deltaE2000,
    })),
    looks: verdict.looks,
  };
}

function productLine(
  { candidate, role, price, image, link }: SummaryProduct,
  verdict: ExplainedVerdict | undefined,
) {
  const { confidence, evidence, reason, swatches } = candidate.palette;
  return {
    role,
    title: candidate.title,
    price,
    image,
    link,
    slot: candidate.slot,
    palette: { confidence, evidence, swatches: swatches.map(swatchLine), ...(reason && { reason }) },
    verdict: verdict ? verdictLine(verdict) : null,
  };
}

const pageLine = (url: string, { summary, verdicts, explanation }: ScannedPage) => ({
  url,
  kind: summary.kind,
  products: summary.products.map((product) => productLine(product, verdicts.get(product.candidate.key))),
  timings: summary.timings,
  ...(explanation && { explanation }),
});

/** The file that an argument names, by its path or a `file:` address; null where there is none. */
function fileOf(page: string): string | null {
  const path = page.startsWith("file:") ? fileURLToPath(page) : page;
  return existsSync(path) && statSync(path).isFile() ? path : null;
}

function readArguments() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { closet: { type: "string" }, wait: { type: "string" }, explain: { type: "boolean" } },
  });
  const wait = values.wait === undefined ? WAIT_MS : Number(values.wait);
  if (positionals.length === 0) throw new Error(USAGE);
  if (!(wait > 0)) throw new Error(`--wait takes a number of milliseconds, not "${values.wait}".`);
  for (const page of positionals) {
    if (!fileOf(page) && !(/^https?:\/\//i.test(page) && URL.canParse(page)))
      throw new Error(`"${page}" is no file and no http or https address.`);
  }
  if (values.closet) {
    for (const line of readClosetFile(readFileSync(values.closet, "utf8")).leftOut)
      process.stderr.write(`${line}\n`);
  }
  return { pages: positionals, wait, closet: values.closet, explain: values.explain ?? false };
}

async function main(): Promise<void> {
  const { pages, wait, closet, explain } = readArguments();
  ensureChromium();
  buildExtension();
  const extension = await openExtension();
  try {
    const desk = await extension.openPage("closet.html");
    if (closet) await importCloset(desk, closet);
    for (const page of pages) {
      const file = fileOf(page);
      const folder = file && (await serveFolder(dirname(file)));
      try {
        const url = folder ? `${folder.url}/${encodeURIComponent(basename(file))}` : page;
        const scanned = await scanPage(extension, desk, url, wait, explain);
        process.stdout.write(`${JSON.stringify(pageLine(page, scanned))}\n`);
      } catch (error) {
        process.stderr.write(`${page}: ${error instanceof Error ? error.message : error}\n`);
        process.exitCode = 1;
      } finally {
        await (folder || null)?.close();
      }
    }
  } finally {
    await extension.close();
  }
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
  process.exitCode = 1;
});
