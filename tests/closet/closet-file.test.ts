import { formatHex } from "culori";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ClosetFileError, readClosetFile, writeClosetFile } from "../../lib/closet/closet-file.ts";
import { correctionArbitrary, pieceArbitrary, wishArbitrary } from "./arbitraries.ts";

const SMALLEST =
  '{"hueward":1,"pieces":[{"name":"Pleated skirt","slot":"bottom","swatches":[{"hex":"#c8102e","share":1}]}]}';

const file = (contents: object) => JSON.stringify({ hueward: 1, ...contents });
const skirt = { name: "Skirt", slot: "bottom", swatches: [{ hex: "#c8102e", share: 1 }] };

describe("closet file", () => {
  it("reads back whatever it wrote", () => {
    const contents = fc.record({
      pieces: fc.array(pieceArbitrary, { maxLength: 5 }),
      wishes: fc.array(wishArbitrary, { maxLength: 5 }),
      corrections: fc.array(correctionArbitrary, { maxLength: 5 }),
    });
    fc.assert(
      fc.property(contents, (closet) => {
        expect(readClosetFile(writeClosetFile(closet, 1_700_000_000_000), 9)).toEqual({
          ...closet,
          leftOut: [],
        });
      }),
    );
  });

  it("accepts the smallest file", () => {
    const { pieces, wishes, corrections, leftOut } = readClosetFile(SMALLEST, 42);
    expect({ wishes, corrections, leftOut }).toEqual({ wishes: [], corrections: [], leftOut: [] });
    expect(pieces).toEqual([
      {
        id: expect.stringMatching(/^file-[0-9a-f]{16}$/),
        name: "Pleated skirt",
        slot: "bottom",
        addedAt: 42,
        swatches: [{ oklab: expect.any(Array), share: 1 }],
      },
    ]);
    const [l = 0, a = 0, b = 0] = pieces[0]?.swatches[0]?.oklab ?? [];
    expect(formatHex({ mode: "oklab", l, a, b })).toBe("#c8102e");
  });

  it("gives a piece without an id the same id at every reading, and twins their own", () => {
    const twice = file({ pieces: [skirt, skirt, { ...skirt, name: "Other" }] });
    const ids = readClosetFile(twice).pieces.map(({ id }) => id);
    expect(new Set(ids).size).toBe(3);
    expect(readClosetFile(twice, 1).pieces.map(({ id }) => id)).toEqual(ids);
    const again = writeClosetFile(readClosetFile(twice), 0);
    expect(readClosetFile(again).pieces.map(({ id }) => id)).toEqual(ids);
  });

  it("takes oklab, mixed swatches, capitals, and equal parts where shares are missing", () => {
    const swatches = [{ hex: "#C8102E" }, { oklab: [0.5, 0, 0], finish: "silver" }];
    const { pieces, leftOut } = readClosetFile(file({ pieces: [{ ...skirt, swatches }] }));
    expect(leftOut).toEqual([]);
    expect(pieces[0]?.swatches.map(({ share, finish }) => [share, finish])).toEqual([
      [0.5, undefined],
      [0.5, "silver"],
    ]);
  });

  it.each([
    ["{", "not valid JSON"],
    ["", "not valid JSON"],
    ["[]", "no closet file"],
    ["null", "no closet file"],
    ['{"pieces":[]}', "no closet file"],
    ['{"hueward":2,"pieces":[]}', "newer Hueward"],
    ['{"hueward":"1","pieces":[]}', "unknown version"],
  ])("refuses %s and says what to do", (text, message) => {
    expect(() => readClosetFile(text)).toThrow(ClosetFileError);
    expect(() => readClosetFile(text)).toThrow(message);
  });

  it("keeps good entries and names the others with the reason", () => {
    const read = readClosetFile(
      file({
        pieces: [
          skirt,
          { ...skirt, name: "Red hat", slot: "hat" },
          { ...skirt, name: "Blue shirt", swatches: [{ hex: "blue", share: 1 }] },
          { ...skirt, name: "Nothing", swatches: [{ share: 1 }] },
          7,
        ],
        wishes: [{ title: "Wool coat" }],
        corrections: {},
      }),
    );
    expect(read.pieces.map(({ name }) => name)).toEqual(["Skirt"]);
    expect(read.leftOut).toEqual([
      "“Red hat” was left out. The slot must be one of: top, bottom, one-piece, layer, legwear, shoes, bag, headwear, jewellery, accessory.",
      "“Blue shirt” was left out. A hex colour is written like #c8102e.",
      "“Nothing” was left out. A swatch needs a colour: hex like #c8102e, or oklab as three numbers.",
      "Piece 5 was left out. A piece has a name, a slot and swatches.",
      expect.stringMatching(/^“Wool coat” was left out\. .+/),
      "“corrections” was left out: it must be a list.",
    ]);
  });

  it("is not fooled by prototype keys", () => {
    const text = `{"hueward":1,"__proto__":{"pieces":[]},"pieces":[${JSON.stringify(skirt).replace("{", '{"__proto__":{"id":"x"},')}]}`;
    const { pieces } = readClosetFile(text);
    expect(pieces).toHaveLength(1);
    expect(pieces[0]?.id).toMatch(/^file-/);
  });
});
