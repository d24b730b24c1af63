import type { Piece } from "../closet/piece.ts";
import { nameColor } from "../color/name-color.ts";
import type { Candidate, Verdict } from "../fit/verdict.ts";
import type { ExplainedVerdict, PieceView, VerdictBrief } from "../link/messages.ts";
import type { Swatch } from "../sample/palette.ts";

const namesOf = (swatches: readonly Swatch[]): string[] =>
  swatches.map(({ oklab, finish }) => finish ?? nameColor(oklab).everyday);

/** The few words of a verdict that a badge carries. */
export function briefOf(candidate: Candidate, verdict: Verdict): VerdictBrief {
  const { headline, kind, count } = verdict;
  return { key: candidate.key, headline, kind, count, names: namesOf(candidate.palette.swatches) };
}

/** As much of a piece as a card shows. */
export function pieceView({ id, name, slot, swatches }: Piece): PieceView {
  const names = namesOf(swatches);
  return { id, name, slot, swatches: swatches.map((swatch, at) => ({ ...swatch, name: names[at] ?? "" })) };
}

/** A whole verdict with every piece that it mentions. */
export function explained(
  candidate: Candidate,
  verdict: Verdict,
  piecesById: ReadonlyMap<string, Piece>,
  wished: boolean,
): ExplainedVerdict {
  const mentioned = [
    ...verdict.duplicates.map(({ pieceId }) => pieceId),
    ...verdict.pieces.map(({ pieceId }) => pieceId),
    ...verdict.lookExamples.flatMap(({ pieceIds }) => pieceIds),
  ];
  const pieces: Record<string, PieceView> = {};
  for (const id of mentioned) {
    const piece = piecesById.get(id);
    if (piece) pieces[id] ??= pieceView(piece);
  }
  return { key: candidate.key, names: namesOf(candidate.palette.swatches), verdict, pieces, wished };
}
