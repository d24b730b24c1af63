// `npm run --silent scan -- [--closet FILE] [--wait MS] URL…`: one JSON line per page, as the built extension sees it.
import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { readClosetFile } from "../../lib/closet/closet-file.ts";
import type { ExplainedVerdict, SummaryProduct } from "../../lib/link/messages.ts";
import { buildExtension } from "../browser/build-extension.ts";
import { ensureChromium } from "../browser/ensure-chromium.ts";
import { importCloset } from "../browser/import-closet.ts";
import { openExtension } from "../browser/open-extension.ts";
import { type ScannedPage, scanPage } from "../browser/scan-page.ts";
import { swatchLine } from "./swatch-line.ts";

/** How long reading one page may take where nothing else is asked for; ms. */
const WAIT_MS = 30_000;

const USAGE = "Usage: npm run --silent scan -- [--closet FILE] [--wait MS] URL…";

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

const pageLine = (url: string, { summary, verdicts }: ScannedPage) => ({
  url,
  kind: summary.kind,
  products: summary.products.map((product) => productLine(product, verdicts.get(product.candidate.key))),
  timings: summary.timings,
});

function readArguments() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { closet: { type: "string" }, wait: { type: "string" } },
  });
  const wait = values.wait === undefined ? WAIT_MS : Number(values.wait);
  if (positionals.length === 0) throw new Error(USAGE);
  if (!(wait > 0)) throw new Error(`--wait takes a number of milliseconds, not "${values.wait}".`);
  for (const url of positionals) {
    if (!/^https?:\/\//i.test(url) || !URL.canParse(url))
      throw new Error(`"${url}" is not an http or https address.`);
  }
  if (values.closet) {
    for (const line of readClosetFile(readFileSync(values.closet, "utf8")).leftOut)
      process.stderr.write(`${line}\n`);
  }
  return { urls: positionals, wait, closet: values.closet };
}

async function main(): Promise<void> {
  const { urls, wait, closet } = readArguments();
  ensureChromium();
  buildExtension();
  const extension = await openExtension();
  try {
    const desk = await extension.openPage("closet.html");
    if (closet) await importCloset(desk, closet);
    for (const url of urls) {
      try {
        process.stdout.write(
          `${JSON.stringify(pageLine(url, await scanPage(extension, desk, url, wait)))}\n`,
        );
      } catch (error) {
        process.stderr.write(`${url}: ${error instanceof Error ? error.message : error}\n`);
        process.exitCode = 1;
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
