import { describe, expect, it } from "vitest";
import type { Candidate } from "../../lib/fit/verdict.ts";
import type { ExplainedVerdict, PieceView } from "../../lib/link/messages.ts";
import { cardModelOf } from "../../lib/visit/card-model-of.ts";
import { choicesOf } from "../../lib/visit/choices.ts";

const candidate: Candidate = {
  key: "k",
  title: "Shirt",
  slot: "top",
  palette: {
    swatches: [
      { oklab: [0.5, 0.17, 0.08], share: 0.7 },
      { oklab: [0.93, 0, 0.005], share: 0.3 },
    ],
    confidence: 0.8,
    evidence: ["pixels"],
  },
};
const piece = (id: string, name: string, oklab: readonly [number, number, number]): PieceView => ({
  id,
  name,
  slot: "bottom",
  swatches: [{ oklab, share: 1, name: `${name} colour` }],
});
const explained: ExplainedVerdict = {
  key: "k",
  names: ["crimson", "white"],
  wished: true,
  pieces: {
    skirt: piece("skirt", "Skirt", [0.45, -0.09, 0.05]),
    tee: piece("tee", "Tee", [0.5, 0.17, 0.08]),
    boots: piece("boots", "Boots", [0.2, 0, 0]),
  },
  verdict: {
    headline: "Finishes 2 looks",
    count: 2,
    kind: "looks",
    duplicates: [{ pieceId: "tee", deltaE2000: 1, samePiece: false }],
    pieces: [
      {
        pieceId: "skirt",
        relation: "complementary",
        alternatives: ["split-complementary"],
        deltaE2000: 60,
        pair: [0, 0],
        why: "They lie opposite each other.",
        lookAlike: true,
      },
      {
        pieceId: "boots",
        relation: "with-neutral",
        alternatives: [],
        deltaE2000: 40,
        pair: [0, 0],
        why: "",
        lookAlike: false,
      },
      {
        pieceId: "lost",
        relation: "analogous",
        alternatives: [],
        deltaE2000: 10,
        pair: [0, 0],
        why: "",
        lookAlike: false,
      },
    ],
    looks: 2,
    lookExamples: [{ pieceIds: ["skirt", "boots"], scheme: "complementary", whole: true, why: "" }],
    caution: "Compare in daylight.",
  },
};
const model = cardModelOf(candidate, explained, choicesOf(candidate.palette, explained.names));

describe("cardModelOf", () => {
  it("names every colour and piece, and leaves out pieces it knows nothing of", () => {
    expect(model.cloth.map(({ name, share }) => [name, share])).toEqual([
      ["crimson", 0.7],
      ["white", 0.3],
    ]);
    expect(model.pieces.map(({ name, word }) => [name, word])).toEqual([
      ["Skirt", "complementary, or split-complementary; may look alike to you"],
      ["Boots", "with a neutral"],
    ]);
    expect(model.looks).toBe("It finishes 2 looks. One of them: with Skirt and Boots, complementary.");
    expect(model.cautions).toEqual(["Compare in daylight."]);
    expect([model.wished, model.owned, model.corrected]).toEqual([true, false, false]);
  });

  it("puts hues on the artist's wheel, red at its top and green opposite, and a neutral in the middle", () => {
    const [red, green] = model.pieces[0]?.dial ?? [];
    expect(Math.min(red?.angle ?? 90, 360 - (red?.angle ?? 90))).toBeLessThan(30);
    expect(Math.abs((green?.angle ?? 0) - 180)).toBeLessThan(30);
    expect(model.pieces[1]?.dial?.[1]?.angle).toBeNull();
  });

  it("never says more of a duplicate than a photo can show", () => {
    const word = (deltaE2000: number, samePiece: boolean) => {
      const verdict = { ...explained.verdict, duplicates: [{ pieceId: "tee", deltaE2000, samePiece }] };
      return cardModelOf(candidate, { ...explained, verdict }, []).duplicates[0]?.word;
    };
    expect([word(1, false), word(5, false), word(0, true)]).toEqual([
      "no difference that a photo can show",
      "very close in shade",
      "this very piece",
    ]);
  });

  it("says why a picture could not be read and that a person named the colour", () => {
    const palette = { swatches: [], confidence: 0, evidence: [], reason: "The picture did not load." };
    expect(cardModelOf({ ...candidate, palette }, explained, []).cautions).toEqual([
      "The picture did not load.",
      "Compare in daylight.",
    ]);
    const said = { ...candidate.palette, evidence: ["person" as const] };
    expect(cardModelOf({ ...candidate, palette: said }, explained, []).corrected).toBe(true);
  });

  it("asks where a piece is worn only where nobody knows", () => {
    expect(model.slots).toEqual([]);
    expect(cardModelOf({ ...candidate, slot: null }, explained, []).slots).toContain("One-piece");
  });

  it("offers the picture's own colours first, then common cloth, each named", () => {
    expect(model.choices.slice(0, 2).map(({ name }) => name)).toEqual([
      "crimson, from the picture",
      "white, from the picture",
    ]);
    expect(model.choices.length).toBeGreaterThan(20);
    expect(new Set(model.choices.map(({ name }) => name)).size).toBe(model.choices.length);
  });
});
