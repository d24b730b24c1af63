import { crc32, deflateSync } from "node:zlib";

type Rgba = readonly [number, number, number, number];

/** A PNG file (ISO/IEC 15948, colour type 6) whose pixel at (x, y) is `at(x, y)`. */
export function pngOf(width: number, height: number, at: (x: number, y: number) => Rgba): Buffer {
  const rows = Buffer.alloc(height * (1 + width * 4));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) rows.set(at(x, y), y * (1 + width * 4) + 1 + x * 4);
  return Buffer.concat([
    headOf(width, height),
    chunk("IDAT", deflateSync(rows, { level: 1 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** The beginning of such a file, with its size and no pixels; bits per channel and colour type as the standard has them. */
export function headOf(width: number, height: number, bits = 8, type = 6): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([bits, type, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", header),
  ]);
}

/** A part of a PNG file. */
export function chunk(type: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, "latin1"), body]);
  const whole = Buffer.alloc(body.length + 12);
  whole.writeUInt32BE(body.length, 0);
  whole.set(named, 4);
  whole.writeUInt32BE(crc32(named), body.length + 8);
  return whole;
}
