import type { Piece } from "../closet/piece.ts";
import { swatchNames } from "../color/swatch-name.ts";
import type { Candidate, Verdict } from "../fit/verdict.ts";
import type { ExplainedVerdict, PieceView, VerdictBrief } from "../link/messages.ts";

/** The few words of a verdict that a badge carries. */
export function briefOf(candidate: Candidate, verdict: Verdict): VerdictBrief {
  const { headline, kind, count } = verdict;
  return { key: candidate.key, headline, kind, count, names: swatchNames(candidate.palette.swatches) };
}

/** As much of a piece as a card shows. */
export function pieceView({ id, name, slot, swatches }: Piece): PieceView {
  const names = swatchNames(swatches);
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
  const names = swatchNames(candidate.palette.swatches);
  // What a verdict works out only when asked would not travel: Firefox leaves getters out of messages.
  return { key: candidate.key, names, verdict: { ...verdict }, pieces, wished };
}
