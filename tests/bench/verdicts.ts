import { argv } from "node:process";
import { pathToFileURL } from "node:url";
import type { Piece } from "../../lib/closet/piece.ts";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import type { Candidate, Verdict } from "../../lib/fit/verdict.ts";
import type { Swatch } from "../../lib/sample/palette.ts";
import { SLOTS } from "../../lib/words/slot.ts";
import { randomFrom } from "../store/studio/random.ts";
import { randomColor } from "./random-color.ts";

export interface VerdictFigures {
  readonly products: number;
  readonly pieces: number;
  /** Milliseconds to work out the closet's colours once. */
  readonly prepareMs: number;
  /** Milliseconds for all verdicts as badges show them, first run in this process. */
  readonly firstMs: number;
  /** Median of the further runs. */
  readonly medianMs: number;
  /** Milliseconds to give every piece of all verdicts its place and its sentence, and to show looks, once. */
  readonly explainMs: number;
  /** Pieces and looks named in all verdicts: shows that the work was done. */
  readonly fits: number;
  readonly looks: number;
}

/** Every fourth piece or product of the bench is a print of three colours. */
const PRINT_EVERY = 4;

/** Verdicts for `products` products against `pieces` pieces, of seeded random colours and all slots. */
export function measureVerdicts(products = 200, pieces = 1000, runs = 5): VerdictFigures {
  const random = randomFrom(7);
  const owned = Array.from({ length: pieces }, (_, at) => randomPiece(at, random));
  const candidates = Array.from({ length: products }, (_, at) => randomCandidate(at, random));
  const started = performance.now();
  const closet = prepareCloset(owned);
  const prepareMs = performance.now() - started;
  const times: number[] = [];
  let verdicts: readonly Verdict[] = [];
  for (let run = 0; run <= runs; run += 1) {
    const start = performance.now();
    verdicts = candidates.map((candidate) => judge(candidate, closet));
    times.push(performance.now() - start);
  }
  const explaining = performance.now();
  const fits = verdicts.reduce(
    (sum, verdict) => sum + verdict.pieces.length + verdict.lookExamples.length,
    0,
  );
  const explainMs = performance.now() - explaining;
  const looks = verdicts.reduce((sum, verdict) => sum + verdict.looks, 0);
  const [firstMs = 0, ...further] = times;
  const medianMs = further.toSorted((a, b) => a - b)[further.length >> 1] ?? firstMs;
  return { products, pieces, prepareMs, firstMs, medianMs, explainMs, fits, looks };
}

function randomPiece(at: number, random: () => number): Piece {
  return {
    id: `p${at}`,
    name: `Piece ${at}`,
    slot: slotAt(random),
    swatches: randomSwatches(at, random),
    addedAt: at,
  };
}

function randomCandidate(at: number, random: () => number): Candidate {
  const palette = { swatches: randomSwatches(at, random), confidence: 0.9, evidence: ["pixels"] as const };
  return { key: `c${at}`, title: `Product ${at}`, slot: slotAt(random), palette };
}

function slotAt(random: () => number) {
  return SLOTS[Math.floor(random() * SLOTS.length)] ?? "top";
}

function randomSwatches(at: number, random: () => number): readonly Swatch[] {
  const shares = at % PRINT_EVERY === 0 ? [0.5, 0.3, 0.2] : [1];
  return shares.map((share) => ({ oklab: randomColor(random), share }));
}

if (argv[1] && import.meta.url === pathToFileURL(argv[1]).href) {
  console.log(JSON.stringify(measureVerdicts()));
}
