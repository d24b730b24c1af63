import { describe, expect, it } from "vitest";
import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import { QUICK_PIECES, quickName, quickPiece } from "../../lib/closet/quick-start.ts";

describe("quick start", () => {
  it("offers pieces of every slot that a look needs, each under its own id", () => {
    const pieces = QUICK_PIECES.map((piece) => quickPiece(piece, 1));
    expect(new Set(pieces.map(({ id }) => id)).size).toBe(QUICK_PIECES.length);
    expect(QUICK_PIECES.length).toBeGreaterThanOrEqual(24);
    for (const slot of ["top", "bottom", "one-piece", "layer", "shoes"]) {
      expect(pieces.some((piece) => piece.slot === slot)).toBe(true);
    }
  });

  it("gives the same piece every time it is ticked", () => {
    for (const piece of QUICK_PIECES) expect(quickPiece(piece, 1)).toEqual(quickPiece(piece, 1));
  });

  it("recolours a piece, with its name and id", () => {
    const blazer = QUICK_PIECES.find(({ noun }) => noun === "blazer");
    if (!blazer) throw new Error("no blazer");
    expect(quickPiece(blazer, 1)).toMatchObject({ id: "quick-navy-blazer", name: "Navy blazer" });
    expect(quickPiece(blazer, 1, "rust")).toEqual({
      id: "quick-rust-blazer",
      name: "Rust blazer",
      slot: "layer",
      addedAt: 1,
      swatches: [{ oklab: CLOTH_COLORS.rust, share: 1 }],
    });
  });

  it("keeps the second colour of a print and never says a colour twice", () => {
    const striped = QUICK_PIECES.find(({ print }) => print);
    if (!striped) throw new Error("no print");
    expect(quickPiece(striped, 1, "red").swatches.map(({ oklab }) => oklab)).toEqual([
      CLOTH_COLORS.red,
      CLOTH_COLORS.navy,
    ]);
    expect(QUICK_PIECES.map((piece) => quickName(piece))).toContain("Denim jacket");
  });
});
