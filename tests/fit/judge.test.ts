import { describe, expect, it } from "vitest";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import type { OwnedPiece } from "../../lib/fit/prepared-piece.ts";
import type { Candidate } from "../../lib/fit/verdict.ts";
import { owned, product } from "./invented.ts";

const verdictOf = (candidate: Candidate, ...pieces: readonly OwnedPiece[]) =>
  judge(candidate, prepareCloset(pieces));

const namesOf = (candidate: Candidate, ...pieces: readonly OwnedPiece[]) =>
  verdictOf(candidate, ...pieces).pieces.map(({ pieceId }) => pieceId);

describe("trade facts (common practice, no source)", () => {
  it.each([
    ["black", "#111111"],
    ["white", "#fafafa"],
    ["grey", "#8c8c8c"],
  ])("%s goes with every colour", (_, neutral) => {
    const colors = ["#c8102e", "#e87722", "#f2c200", "#2f6b47", "#224fa8", "#5a3b6b", "#ffffff", "#000000"];
    const closet = colors.map((color) => owned(color, "bottom", color));
    const { pieces } = verdictOf(product("top", neutral), ...closet);
    expect(pieces.map(({ pieceId }) => pieceId).toSorted()).toEqual(colors.toSorted());
    for (const { pieceId, relation } of pieces) {
      if (pieceId !== "#ffffff" && pieceId !== "#000000") expect(relation).toBe("with-neutral");
    }
  });

  it("a neutral comes after the relations of hues, so that a hue is offered first", () => {
    const order = namesOf(
      product("top", "#224fa8"),
      owned("black trousers", "bottom", "#111111"),
      owned("orange skirt", "bottom", "#e87722"),
      owned("cobalt skirt", "bottom", "#224fa8"),
    );
    expect(order).toEqual(["cobalt skirt", "orange skirt", "black trousers"]);
  });

  it("similar saturation reads as belonging together", () => {
    // Two greens, both opposite the red: one as strong as it, one greyed.
    const order = namesOf(
      product("top", "#c8102e"),
      owned("greyed green", "bottom", "#8aa08c"),
      owned("strong green", "bottom", "#00843d"),
    );
    expect(order[0]).toBe("strong green");
  });

  it("one hue in several levels works whatever the saturation", () => {
    const { pieces } = verdictOf(
      product("top", "#1f4e9e"),
      owned("pale blue trousers", "bottom", "#b9c9e4"),
      owned("greyed orange skirt", "bottom", "#a98b74"),
    );
    expect(pieces[0]).toMatchObject({ pieceId: "pale blue trousers", relation: "monochromatic" });
  });

  it("a print goes with the solids whose colours it contains", () => {
    const floral = product("top", "#25365e", "#c8102e", "#f4f3ef");
    const { pieces } = verdictOf(
      floral,
      owned("red skirt", "bottom", "#c8102e"),
      owned("white jeans", "bottom", "#f4f3ef"),
      owned("navy skirt", "bottom", "#25365e"),
    );
    expect(pieces.map(({ pieceId, relation, pair }) => [pieceId, relation, pair])).toEqual(
      expect.arrayContaining([
        ["navy skirt", "matching", [0, 0]],
        ["red skirt", "matching", [1, 0]],
        ["white jeans", "matching", [2, 0]],
      ]),
    );
  });

  it("an owned print goes with a solid that it contains", () => {
    const striped = owned("striped top", "top", "#f4f3ef", "#25365e");
    expect(verdictOf(product("bottom", "#25365e"), striped).pieces).toMatchObject([
      { pieceId: "striped top", relation: "matching", pair: [0, 1] },
    ]);
  });

  it.each([
    ["red", "#c8102e", "green", "#00843d", "complementary"],
    ["orange", "#e87722", "blue", "#224fa8", "complementary"],
    ["yellow", "#f2c200", "violet", "#6a2c91", "complementary"],
    ["red", "#c8102e", "yellow", "#f2c200", "triadic"],
    ["blue", "#224fa8", "green", "#00843d", "analogous"],
  ])("%s %s and %s %s are %s", (_one, one, _other, other, relation) => {
    const [fit] = verdictOf(product("top", one), owned("x", "bottom", other)).pieces;
    expect([fit?.relation, ...(fit?.alternatives ?? [])]).toContain(relation);
  });
});

describe("duplicates", () => {
  it("are the same shade in the same slot only", () => {
    const closet = [
      owned("red skirt", "bottom", "#c8102e"),
      owned("wine skirt", "bottom", "#6e373d"),
      owned("red top", "top", "#c8102e"),
    ];
    const { duplicates, pieces } = verdictOf(product("bottom", "#c5122f"), ...closet);
    expect(duplicates).toEqual([{ pieceId: "red skirt", deltaE2000: expect.any(Number), samePiece: false }]);
    expect(pieces.map(({ pieceId }) => pieceId)).toEqual(["red top"]);
  });

  it("of prints need a partner for every colour, in either order", () => {
    const striped = owned("navy and white", "top", "#25365e", "#f4f3ef");
    const ids = (...colors: readonly string[]) =>
      verdictOf(product("top", ...colors), striped).duplicates.map(({ pieceId }) => pieceId);
    expect(ids("#f4f3ef", "#25365e")).toEqual(["navy and white"]);
    expect(ids("#25365e")).toEqual([]);
    expect(ids("#25365e", "#c8102e")).toEqual([]);
    expect(ids("#25365e", "#f4f3ef", "#c8102e")).toEqual([]);
  });

  it("ignore trims", () => {
    const trimmed = { ...product("top"), palette: { ...product("top").palette } };
    const [body, trim] = product("top", "#25365e", "#c8102e").palette.swatches;
    if (!body || !trim) throw new Error("no swatches");
    const swatches = [
      { ...body, share: 0.9 },
      { ...trim, share: 0.1 },
    ];
    const candidate = { ...trimmed, palette: { ...trimmed.palette, swatches } };
    expect(verdictOf(candidate, owned("navy top", "top", "#25365e")).duplicates).toHaveLength(1);
  });

  it("are certain where the product itself is owned, whatever its colour and slot", () => {
    const bought = { ...owned("green coat", "layer", "#00843d"), productKey: "k" };
    const verdict = verdictOf(product(null, "#c8102e"), bought);
    expect(verdict).toMatchObject({
      kind: "owned",
      headline: "You own this piece",
      pieces: [],
      caution: null,
    });
    expect(verdict.duplicates).toMatchObject([{ pieceId: "green coat", samePiece: true }]);
  });
});

describe("slots", () => {
  it("leaves out what is not worn with the product", () => {
    const closet = (["top", "bottom", "one-piece", "layer", "shoes", "accessory"] as const).map((slot) =>
      owned(slot, slot, "#111111"),
    );
    const worn = (slot: Candidate["slot"]) => namesOf(product(slot, "#c8102e"), ...closet).toSorted();
    expect(worn("top")).toEqual(["accessory", "bottom", "layer", "shoes"]);
    expect(worn("one-piece")).toEqual(["accessory", "layer", "shoes"]);
    expect(worn("layer")).toEqual(["accessory", "bottom", "one-piece", "shoes", "top"]);
    expect(worn("shoes")).toEqual(["accessory", "bottom", "layer", "one-piece", "top"]);
    expect(worn("accessory")).toEqual(["accessory", "bottom", "layer", "one-piece", "shoes", "top"]);
  });

  it("claims neither duplicates nor looks where the slot is not known", () => {
    const verdict = verdictOf(
      product(null, "#c8102e"),
      owned("red skirt", "bottom", "#c8102e"),
      owned("red top", "top", "#c8102e"),
    );
    expect(verdict).toMatchObject({ duplicates: [], looks: 0, lookExamples: [], kind: "set" });
    expect(verdict.headline).toBe("Same shade as 2 of yours");
  });
});

describe("looks", () => {
  const closet = [
    owned("white shirt", "top", "#fafafa"),
    owned("orange top", "top", "#e87722"),
    owned("blue jeans", "bottom", "#224fa8"),
    owned("black trousers", "bottom", "#111111"),
    owned("black dress", "one-piece", "#111111"),
    owned("tan bag", "bag", "#9d775a"),
  ];

  it("of a top are its bottoms, of a one-piece what is worn over it", () => {
    expect(verdictOf(product("top", "#e0a030"), ...closet).looks).toBe(2);
    expect(verdictOf(product("bottom", "#224fa8"), ...closet).looks).toBe(2);
    expect(verdictOf(product("one-piece", "#fafafa"), ...closet).looks).toBe(1);
  });

  it("of an optional piece are the owned cores with which it ties", () => {
    // Orange shoes: with the orange top and either bottom, and opposite the jeans with the white shirt; the black dress
    // and the white shirt with black trousers have no colour to tie to.
    const { looks, lookExamples } = verdictOf(product("shoes", "#e87722"), ...closet);
    expect(looks).toBe(3);
    expect(lookExamples.map(({ pieceIds }) => pieceIds.toSorted().join(" + ")).toSorted()).toEqual([
      "black trousers + orange top",
      "blue jeans + orange top",
      "blue jeans + white shirt",
    ]);
  });

  it("repeat the shade of the product where an optional piece has it", () => {
    const { lookExamples } = verdictOf(product("top", "#9d775a"), ...closet);
    expect(lookExamples.length).toBeGreaterThan(0);
    for (const { pieceIds } of lookExamples) expect(pieceIds).toContain("tan bag");
  });

  it("shows six at most", () => {
    const many = Array.from({ length: 20 }, (_, at) => owned(`trousers ${at}`, "bottom", "#111111"));
    const verdict = verdictOf(product("top", "#fafafa"), ...many);
    expect(verdict.looks).toBe(20);
    expect(verdict.lookExamples).toHaveLength(6);
    expect(verdict.lookExamples[0]?.why).toMatch(/^With your trousers \d+ it follows one scheme: .+\.$/);
  });
});

describe("a verdict", () => {
  it("says why in one plain sentence with both names", () => {
    const coat = owned("Wool coat", "layer", "#e87722");
    const [fit] = verdictOf(product("top", "#224fa8"), coat).pieces;
    expect(fit?.why).toMatch(/^\S.* your wool coat .*artist's wheel.*\.$/);
    expect(fit?.why).not.toContain("#");
  });

  it("survives being sent to another context whole", () => {
    const verdict = verdictOf(product("shoes", "#e87722"), owned("Orange dress", "one-piece", "#e87722"));
    expect(structuredClone(verdict)).toEqual(verdict);
    expect(JSON.parse(JSON.stringify(verdict))).toEqual(verdict);
    expect(Object.keys(verdict)).toEqual(expect.arrayContaining(["pieces", "lookExamples"]));
    expect(verdict.pieces).toHaveLength(1);
    expect(verdict.lookExamples).toHaveLength(1);
  });
});
