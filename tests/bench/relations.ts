import { argv } from "node:process";
import { pathToFileURL } from "node:url";
import type { Oklab as OklabObject } from "culori";
import { colorPoint } from "../../lib/color/color-point.ts";
import type { Oklab } from "../../lib/color/oklab.ts";
import { type PackedColors, packColors } from "../../lib/color/packed-colors.ts";
import { relateToAll } from "../../lib/color/relate-to-all.ts";
import { relationsIn } from "../../lib/color/relation-code.ts";
import { roundedNames, type SlowColor, slowColor, slowFigures, slowNames } from "../color/slow-relation.ts";
import { randomFrom } from "../store/studio/random.ts";
import { randomColor } from "./random-color.ts";

export interface RelationFigures {
  readonly pairs: number;
  /** Milliseconds to lay the numbers of all colours side by side, once. */
  readonly packMs: number;
  /** Relations per second from packed numbers; from culori's objects; and from these converted once, before the clock starts. */
  readonly packedPerSecond: number;
  readonly culoriPerSecond: number;
  readonly convertedPerSecond: number;
  /** How many times as fast as each of the two loops over objects the packed numbers are. */
  readonly timesCulori: number;
  readonly timesConverted: number;
  /** Pairs whose relation or alternatives differ, and those of them that lie on an edge, where rounding decides. */
  readonly mismatches: number;
  readonly onEdge: number;
  /** Lists of names that occur: shows that the work was done. */
  readonly answers: number;
}

/** Confidence of the sampler, 0–1: a good picture. */
const CONFIDENCE = 0.9;

/** Colours that are related to all others before the clock turns to the next loop. */
const TURN = 20;

/** Colours that the two slow loops warm up with; the fast one takes all of them. */
const WARM_UP = 10;

/** All pairs of `count` colours with `others`, by each of the three loops in turn, and whether they agree. */
export function measureRelations(count = 200, others = 5000): RelationFigures {
  const random = randomFrom(11);
  const ones = Array.from({ length: count }, () => randomColor(random));
  const all = Array.from({ length: others }, () => randomColor(random));
  const [points, allPoints] = [ones.map(colorPoint), all.map(colorPoint)];
  const [packed, packing] = timed(() => [packColors(points), packColors(allPoints)] as const);
  const [objects, allObjects] = [ones.map(objectOf), all.map(objectOf)];
  const [slow, allSlow] = [objects.map(slowColor), allObjects.map(slowColor)];

  // The compiler must have seen each loop for about as long before the clock counts.
  for (let at = 0; at < count; at++) byPacked(packed[0], at, packed[1]);
  for (let at = 0; at < WARM_UP; at++) {
    byCulori(objects[at], allObjects);
    bySlowColors(slow[at], allSlow);
  }

  const ms = { packed: 0, culori: 0, converted: 0 };
  const answers = new Set<string>();
  let mismatches = 0;
  let onEdge = 0;
  for (let from = 0; from < count; from += TURN) {
    const turn = Array.from({ length: TURN }, (_, at) => from + at).filter((at) => at < count);
    const [byNumbers, packedMs] = timed(() => turn.map((at) => byPacked(packed[0], at, packed[1])));
    const [byObjects, culoriMs] = timed(() => turn.map((at) => byCulori(objects[at], allObjects)));
    const [byConverted, convertedMs] = timed(() => turn.map((at) => bySlowColors(slow[at], allSlow)));
    ms.packed += packedMs;
    ms.culori += culoriMs;
    ms.converted += convertedMs;
    for (const [row, at] of turn.entries()) {
      for (let other = 0; other < others; other++) {
        const names = relationsIn(byNumbers[row]?.[other] ?? 0).join();
        answers.add(names);
        if (names === byObjects[row]?.[other]?.join() && names === byConverted[row]?.[other]?.join())
          continue;
        mismatches += 1;
        const [one, two] = [slow[at], allSlow[other]];
        if (one && two && roundedNames(slowFigures(one, two, CONFIDENCE)).has(names)) onEdge += 1;
      }
    }
  }
  const pairs = count * others;
  return {
    pairs,
    packMs: packing,
    packedPerSecond: Math.round((pairs / ms.packed) * 1000),
    culoriPerSecond: Math.round((pairs / ms.culori) * 1000),
    convertedPerSecond: Math.round((pairs / ms.converted) * 1000),
    timesCulori: ms.culori / ms.packed,
    timesConverted: ms.converted / ms.packed,
    mismatches,
    onEdge,
    answers: answers.size,
  };
}

function timed<T>(work: () => T): readonly [T, ms: number] {
  const start = performance.now();
  const result = work();
  return [result, performance.now() - start];
}

const objectOf = ([l, a, b]: Oklab): OklabObject => ({ mode: "oklab", l, a, b });

function byPacked(colors: PackedColors, at: number, others: PackedColors): Uint32Array {
  const names = new Uint32Array(others.count);
  relateToAll(colors, at, others, CONFIDENCE, names);
  return names;
}

/** Everything worked out per pair, from objects as culori has them. */
function byCulori(one: OklabObject | undefined, others: readonly OklabObject[]) {
  if (!one) return [];
  return others.map((other) => slowNames(slowFigures(slowColor(one), slowColor(other), CONFIDENCE)));
}

/** The same with each colour converted once, before the clock starts. */
function bySlowColors(one: SlowColor | undefined, others: readonly SlowColor[]) {
  if (!one) return [];
  return others.map((other) => slowNames(slowFigures(one, other, CONFIDENCE)));
}

if (argv[1] && import.meta.url === pathToFileURL(argv[1]).href) {
  console.log(JSON.stringify(measureRelations()));
}
