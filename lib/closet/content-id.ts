import type { FilePiece } from "./file-piece.ts";

/** Decimals of a colour that count; finer differences are below what 8 bits per channel can show. */
const COLOR_DECIMALS = 4;

/** The same name, slot and swatches give the same id, so that reading a file twice makes no copies. */
export function contentId({ name, slot, swatches }: FilePiece, repeat: number): string {
  const colors = swatches.map(({ oklab, share, finish }) => [
    ...oklab.map((axis) => axis.toFixed(COLOR_DECIMALS)),
    share.toFixed(COLOR_DECIMALS),
    finish ?? "",
  ]);
  const digest = fnv1a64(JSON.stringify([name, slot, colors, repeat]));
  return `file-${digest.toString(16).padStart(16, "0")}`;
}

/** FNV-1a, 64 bits, over UTF-16 code units (G. Fowler, L. C. Noll, K.-P. Vo, 1991; offset and prime from memory). */
function fnv1a64(text: string): bigint {
  let hash = 0xcbf29ce484222325n;
  for (let index = 0; index < text.length; index += 1) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(text.charCodeAt(index))) * 0x100000001b3n);
  }
  return hash;
}
