// `node tests/bench/sample-views.ts [KIND…]`: what the other photos of a product add to its first one, on the generated products of
// tests/sample/kinds/view-pictures.ts: from the first photo alone, and with the others where the first leaves the sampler unsure, as a
// visit of a page does. `--scores` first: the scores as JSON instead of tables.
import process, { argv } from "node:process";
import { pathToFileURL } from "node:url";
import { type Palette, SURE } from "../../lib/sample/palette.ts";
import type { Photo } from "../../lib/sample/photo.ts";
import type { SampleHints } from "../../lib/sample/sample-pixels.ts";
import { sampleViews } from "../../lib/sample/sample-views.ts";
import { SIDE } from "../sample/kinds/develop.ts";
import type { KindPicture } from "../sample/kinds/shot.ts";
import { type ViewedProduct, viewedProducts } from "../sample/kinds/view-pictures.ts";
import { reliability, type Score, scoreSwatches, summarize } from "./measure-photos.ts";
import type { KindScore, Way } from "./sample-kinds.ts";

/** One product read from its first photo and with its others. */
export interface ViewScore {
  readonly one: KindScore;
  readonly all: KindScore;
}

const photoOf = ({ data }: KindPicture): Photo => ({ data, width: SIDE, height: SIDE });

function score({ kind, first, others }: ViewedProduct, way: Way): ViewScore {
  const { id, tone, truth, slot, text } = first;
  const hints: SampleHints = way === "words" ? { slot, text } : { slot: null, text: "" };
  const scored = (palette: Palette, start: number): KindScore => {
    const ms = performance.now() - start;
    const { confidence, swatches } = palette;
    return { kind, tone, file: id, confidence, ms, ...scoreSwatches(swatches, truth) };
  };
  const start = performance.now();
  const alone = sampleViews(photoOf(first), [], hints);
  const one = scored(alone, start);
  if (alone.confidence >= SURE) return { one, all: one };
  const again = performance.now();
  return { one, all: scored(sampleViews(photoOf(first), others.map(photoOf), hints), again) };
}

/** The scores of the products of some kinds, or of all, in both ways. */
export function viewScores(kinds?: readonly string[]): Record<Way, ViewScore[]> {
  const products = viewedProducts(kinds);
  const scores = (way: Way) => products.map((product) => score(product, way));
  return { pixels: scores("pixels"), words: scores("words") };
}

/** Figures of both ways, first photo against all; of what is claimed to be sure, how much is within 10. */
export function measureViews(kinds?: readonly string[]) {
  const scores = viewScores(kinds);
  const sure = (list: readonly Score[]) => {
    const band = reliability(list).at(-1);
    return { sure: band?.pictures, "sure within 10": band?.["within 10"] };
  };
  const row = (list: readonly Score[]) => ({ ...summarize(list), ...sure(list) });
  const rows = (way: Way) => ({
    [`one photo, ${way}`]: row(scores[way].map(({ one }) => one)),
    [`with others, ${way}`]: row(scores[way].map(({ all }) => all)),
  });
  return { ...rows("pixels"), ...rows("words") };
}

if (import.meta.url === pathToFileURL(argv[1] ?? "").href) {
  const [first, ...rest] = argv.slice(2);
  if (first === "--scores") process.stdout.write(JSON.stringify(viewScores(rest.length ? rest : undefined)));
  else console.table(measureViews(first ? [first, ...rest] : undefined));
}
