import { deflateSync } from "node:zlib";
import { chunk, headOf } from "./png-of.ts";

const GREYS_OF_ONE_BIT = 0;

/** A PNG of a side of `side` pixels, all black, in a few kilobytes: 10,000 a side unfold to 400 MB. */
export function bombOf(side: number): Buffer {
  const rows = Buffer.alloc(side * (1 + Math.ceil(side / 8)));
  return Buffer.concat([
    headOf(side, side, 1, GREYS_OF_ONE_BIT),
    chunk("IDAT", deflateSync(rows, { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}
