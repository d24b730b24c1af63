import { describe, expect, it } from "vitest";
import { VISIONS, type Vision } from "../../lib/color/color-vision.ts";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import { owned, product } from "./invented.ts";

/** Mixed up by someone without middle cones, as red and green in one lightness are (common knowledge, no source). */
const OLIVE = "#64663d";
const RED = "#b32a33";

const CLOSET = [
  owned("red skirt", "bottom", RED),
  owned("navy jeans", "bottom", "#252c48"),
  owned("olive chinos", "bottom", OLIVE),
];

const alikeTo = (vision: Vision | null, ...colors: readonly string[]) =>
  judge(product("top", ...colors), prepareCloset(CLOSET, vision))
    .pieces.filter(({ lookAlike }) => lookAlike)
    .map(({ pieceId }) => pieceId);

describe("pieces that look alike to a person", () => {
  it("are told to those who mix the colours up, and to no one else", () => {
    expect(alikeTo("deutan", OLIVE)).toEqual(["red skirt"]);
    expect(alikeTo("tritan", OLIVE)).toEqual([]);
    expect(alikeTo(null, OLIVE)).toEqual([]);
  });

  it("are not those that match for everybody", () => {
    for (const vision of VISIONS) expect(alikeTo(vision, RED)).not.toContain("red skirt");
  });

  it("are told of the swatches by which they go together", () => {
    // Navy and olive: the print goes with the red skirt by whichever swatch the verdict names.
    const { pieces } = judge(product("top", "#252c48", OLIVE), prepareCloset(CLOSET, "deutan"));
    const skirt = pieces.find(({ pieceId }) => pieceId === "red skirt");
    expect(skirt?.lookAlike).toBe(skirt?.pair[0] === 1);
    expect(pieces.find(({ pieceId }) => pieceId === "olive chinos")).toMatchObject({
      relation: "matching",
      pair: [1, 0],
      lookAlike: false,
    });
  });

  it("change nothing else in a verdict", () => {
    const plain = judge(product("top", OLIVE), prepareCloset(CLOSET));
    for (const vision of VISIONS) {
      const told = judge(product("top", OLIVE), prepareCloset(CLOSET, vision));
      const pieces = told.pieces.map((fit) => ({ ...fit, lookAlike: false }));
      expect({ ...told, pieces }).toEqual({ ...plain });
    }
  });
});
