import { render } from "preact";
import type { Piece, Wish } from "../../lib/closet/piece.ts";
import { ClosetPage } from "../../lib/ui/closet-page/closet-page.tsx";
import { manyPieces, threeWishes, twelvePieces } from "./example-pieces.ts";
import { exampleTools } from "./example-tools.ts";
import { memoryCloset } from "./memory-closet.ts";

/** Draws the closet page with so many pieces into the page it is loaded in; 12 are the common ones. */
export function show(count: number, wished: boolean): void {
  const pieces = count === 12 ? twelvePieces() : manyPieces(count);
  const wishes = wished ? threeWishes().map(pictured) : [];
  const closet = memoryCloset({ pieces: pieces.map(picturedPiece), wishes });
  render(<ClosetPage tools={exampleTools(closet)} />, document.body);
}

/** Every fifth piece has a small picture. */
function picturedPiece(piece: Piece, at: number): Piece {
  const colour = piece.swatches[0]?.oklab;
  return at % 5 === 0 && colour ? { ...piece, picture: drawn(colour) } : piece;
}

function pictured(wish: Wish): Wish {
  const colour = wish.palette.swatches[0]?.oklab;
  return colour ? { ...wish, picture: drawn(colour) } : wish;
}

/** A shirt-like shape on a pale ground, as a data: URL. */
function drawn(colour: readonly number[]): string {
  const canvas = document.createElement("canvas");
  canvas.width = 120;
  canvas.height = 160;
  const pen = canvas.getContext("2d");
  if (!pen) return "";
  pen.fillStyle = "#e9e8e4";
  pen.fillRect(0, 0, 120, 160);
  pen.fillStyle = `oklab(${colour.join(" ")})`;
  pen.fill(new Path2D("M42 28L20 40L8 80L26 86L32 66V138H88V66L94 86L112 80L100 40L78 28Q60 40 42 28Z"));
  return canvas.toDataURL("image/jpeg", 0.8);
}
