import { argv } from "node:process";
import { pathToFileURL } from "node:url";
import { ALL_CASES } from "../page/cases/all-cases.ts";
import type { ExpectedProduct, PageCase } from "../page/cases/page-case.ts";
import { openPages, type ReadResult } from "../page/open-pages.ts";

/** How well products are found on pages that say what a person sees on them. Shares are 0–1. */
export interface AccuracyFigures {
  readonly pages: number;
  readonly tiles: number;
  readonly precision: number;
  readonly recall: number;
  readonly f1: number;
  readonly mainPages: number;
  /** Share of product pages whose product was found under its name. */
  readonly mainRight: number;
  /** Share of found products with a price whose amount and currency are right. */
  readonly priceRight: number;
  readonly emptyPages: number;
  /** Pages without products on which one was found. */
  readonly emptyPagesWrong: number;
}

type Found = ReadResult["products"][number];

/** Pairs what was expected with what was found by its role and picture; what is left over was found wrongly. */
function pair({ products }: PageCase, found: ReadResult["products"]) {
  const left = [...found];
  const pairs = products.map((expected): [ExpectedProduct, Found | undefined] => {
    const { role = "tile", picture } = expected;
    const at = left.findIndex((one) => one.role === role && one.images[0]?.includes(picture));
    return [expected, at < 0 ? undefined : left.splice(at, 1)[0]];
  });
  return { pairs, left };
}

const samePrice = ({ price: wanted }: ExpectedProduct, { price }: Found): boolean =>
  price?.amount === wanted?.[0] && (price?.currency ?? null) === (wanted?.[1] ?? null);

const share = (part: number, whole: number): number => (whole === 0 ? 1 : part / whole);

/** Reads all invented pages in a real browser. */
export async function measureAccuracy(): Promise<AccuracyFigures> {
  const cases = ALL_CASES.flatMap(([, group]) => group);
  const pages = await openPages();
  try {
    const results: ReturnType<typeof pair>[] = [];
    for (const given of cases) {
      const page = await pages.open(given);
      results.push(pair(given, (await pages.read(page)).products));
      await page.close();
    }
    const pairs = results.flatMap((result) => result.pairs);
    const mains = pairs.filter(([{ role }]) => role === "main");
    const tiles = pairs.filter(([{ role }]) => role !== "main");
    const met = tiles.filter(([, found]) => found).length;
    const extra = results.flatMap(({ left }) => left).filter(({ role }) => role === "tile").length;
    const priced = pairs.filter(([{ price }, found]) => price && found);
    const empty = results.filter((result) => result.pairs.length === 0);
    const [precision, recall] = [share(met, met + extra), share(met, tiles.length)];
    return {
      pages: cases.length,
      tiles: tiles.length,
      precision,
      recall,
      f1: (2 * precision * recall) / (precision + recall || 1),
      mainPages: mains.length,
      mainRight: share(mains.filter(([{ title }, found]) => found?.title === title).length, mains.length),
      priceRight: share(
        priced.filter(([wanted, found]) => found && samePrice(wanted, found)).length,
        priced.length,
      ),
      emptyPages: empty.length,
      emptyPagesWrong: empty.filter(({ left }) => left.length > 0).length,
    };
  } finally {
    await pages.close();
  }
}

if (argv[1] && import.meta.url === pathToFileURL(argv[1]).href) {
  console.log(JSON.stringify(await measureAccuracy()));
}
