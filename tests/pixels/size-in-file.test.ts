import { describe, expect, it } from "vitest";
import { sizeInFile } from "../../lib/pixels/size-in-file.ts";
import { headOf } from "./png-of.ts";

const ascii = (text: string) => [...text].map((character) => character.charCodeAt(0));
const big = (value: number, bytes: number) =>
  Array.from({ length: bytes }, (_, at) => (value >>> (8 * (bytes - 1 - at))) & 255);
const little = (value: number, bytes: number) => big(value, bytes).toReversed();

/** Beginnings of files of 700 × 900 pixels, by the formats' own specifications. */
const HEADS = {
  png: [...headOf(700, 900)],
  gif: [...ascii("GIF89a"), ...little(700, 2), ...little(900, 2)],
  // A segment of the program's own that holds a smaller picture, fill bytes, then the frame.
  jpeg: [
    ...[0xff, 0xd8, 0xff, 0xe1, 0x00, 0x0c, 0xff, 0xd8, 0xff, 0xc0, 0, 17, 8, 0, 1, 0],
    ...[0xff, 0xff, 0xff, 0xc2, 0, 17, 8, ...big(900, 2), ...big(700, 2), 3],
  ],
  "lossy webp": [
    ...[...ascii("RIFF"), 0, 0, 0, 0, ...ascii("WEBPVP8 "), 0, 0, 0, 0, 0, 0, 0, 0x9d, 0x01, 0x2a],
    ...[...little(700, 2), ...little(900, 2)],
  ],
  "lossless webp": [
    ...[...ascii("RIFF"), 0, 0, 0, 0, ...ascii("WEBPVP8L"), 0, 0, 0, 0, 0x2f],
    ...little(699 | (899 << 14), 4),
  ],
  "extended webp": [
    ...[...ascii("RIFF"), 0, 0, 0, 0, ...ascii("WEBPVP8X"), 0, 0, 0, 0, 0, 0, 0, 0],
    ...[...little(699, 3), ...little(899, 3)],
  ],
  // A picture of tiles: the size of one, then that of the whole.
  avif: [
    ...[...big(16, 4), ...ascii("ftypavif"), 0, 0, 0, 0],
    ...[...big(20, 4), ...ascii("ispe"), 0, 0, 0, 0, ...big(70, 4), ...big(90, 4)],
    ...[...big(20, 4), ...ascii("ispe"), 0, 0, 0, 0, ...big(700, 4), ...big(900, 4)],
  ],
} as const;

describe("the size that a picture file says it has", () => {
  it.each(Object.entries(HEADS))("is found in a %s", (_, head) => {
    expect(sizeInFile(Uint8Array.from(head))).toEqual({ width: 700, height: 900 });
  });

  it.each(Object.entries(HEADS))("is not made up where a %s ends before it", (_, head) => {
    for (let length = 0; length < head.length - 9; length++) {
      const size = sizeInFile(Uint8Array.from(head.slice(0, length)));
      expect(size === null || size.width === 70, `${length} bytes`).toBe(true);
    }
  });

  it("is not found in what is no picture", () => {
    for (const text of [
      "",
      "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>",
      "{}",
      "RIFF....WAVE",
    ])
      expect(sizeInFile(Uint8Array.from(ascii(text)))).toBeNull();
  });

  it("is read from the bytes it is given, wherever they lie in their buffer", () => {
    const head = Uint8Array.from([1, 2, 3, ...HEADS.png]).subarray(3);
    expect(sizeInFile(head)).toEqual({ width: 700, height: 900 });
  });
});
