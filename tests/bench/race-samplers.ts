import { fileURLToPath } from "node:url";
import { bundle } from "../browser/bundle.ts";
import { openBrowser } from "../browser/open-browser.ts";

/** Median milliseconds in a real browser of one 96 × 96 picture; decoding is in none of them. */
export interface Race {
  readonly sampler: number;
  readonly medianCut: number;
  readonly weightedKMeans: number;
  /** The sampler's time against theirs. */
  readonly againstMedianCut: number;
  readonly againstKMeans: number;
}

/** Rounds over all pictures; the first ones warm the engine up and do not count. */
const ROUNDS = 18;
const WARM_UP = 6;

/** Pictures timed together: a page's clock ticks every 0.1 ms, which is a third of what one picture takes. */
const BATCH = 10;

/** Runs inside the page: each batch goes through all three, another one first each round, so that they share what else the machine does. */
const RACE = `
  globalThis.race = (pictures, rounds, warmUp, size) => {
    const ways = [(data) => Sampler.samplePixels(data, 96, 96), Quantizers.medianCut, Quantizers.weightedKMeans];
    const times = ways.map(() => []);
    const inputs = pictures.map((base64) => Uint8ClampedArray.from(atob(base64), (c) => c.charCodeAt(0)));
    for (let round = 0; round < rounds; round++) {
      for (let from = 0; from < inputs.length; from += size) {
        const batch = inputs.slice(from, from + size);
        ways.forEach((_, turn) => {
          const w = (turn + round) % ways.length;
          const start = performance.now();
          for (const data of batch) ways[w](data);
          if (round >= warmUp) times[w].push((performance.now() - start) / batch.length);
        });
      }
    }
    return times.map((list) => list.sort((a, b) => a - b)[list.length >> 1]);
  };
`;

const pathOf = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Times the sampler beside the two quantizers on the same 96 × 96 pixels, in one run. */
export async function raceSamplers(pictures: readonly Uint8ClampedArray[]): Promise<Race> {
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    await page.addScriptTag({
      content: await bundle(pathOf("../../lib/sample/sample-pixels.ts"), "Sampler"),
    });
    await page.addScriptTag({ content: await bundle(pathOf("quantizers.ts"), "Quantizers") });
    await page.addScriptTag({ content: RACE });
    const given = JSON.stringify(pictures.map((data) => Buffer.from(data).toString("base64")));
    const times = (await page.evaluate(`race(${given}, ${ROUNDS}, ${WARM_UP}, ${BATCH})`)) as number[];
    const [sampler = 0, medianCut = 0, weightedKMeans = 0] = times;
    return {
      sampler,
      medianCut,
      weightedKMeans,
      againstMedianCut: sampler / medianCut,
      againstKMeans: sampler / weightedKMeans,
    };
  } finally {
    await browser.close();
  }
}
