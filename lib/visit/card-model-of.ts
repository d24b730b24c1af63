import type { CardModel, CardPiece, DialModel } from "../badge/card-model.ts";
import { chromaOf, cssOf, hueOf } from "../color/convert.ts";
import { isNeutral } from "../color/neutral.ts";
import type { Oklab } from "../color/oklab.ts";
import { NO_VISIBLE_DIFFERENCE } from "../color/thresholds.ts";
import { wheelFromHue } from "../color/wheel.ts";
import type { Candidate, Duplicate, PieceFit } from "../fit/verdict.ts";
import type { ExplainedVerdict, PieceView } from "../link/messages.ts";
import { LOOK_ALIKE, relationText, SLOT_WORDS, schemeText } from "../ui/words.ts";
import { SLOTS } from "../words/slot.ts";
import { clothOf } from "./badge-model-of.ts";
import type { Choice } from "./choices.ts";

/** What the card of a product shows. */
export function cardModelOf(
  { title, slot, palette }: Candidate,
  { verdict, names, pieces, wished }: ExplainedVerdict,
  choices: readonly Choice[],
): CardModel {
  const { duplicates, headline, caution } = verdict;
  return {
    title,
    headline,
    cloth: clothOf(palette, names),
    cautions: [palette.reason, caution].filter((sentence) => !!sentence).map(String),
    duplicates: duplicates.flatMap((duplicate) => withPiece(pieces, duplicate, duplicateOf)),
    pieces: verdict.pieces.flatMap((fit) => withPiece(pieces, fit, (piece) => fitOf(piece, fit, palette))),
    looks: looksOf({ verdict, pieces }),
    wished,
    owned: duplicates.some(({ samePiece }) => samePiece),
    corrected: palette.evidence.includes("person"),
    choices: choices.map(({ name, oklab }) => ({ name, css: cssOf(oklab), share: 1 })),
    slots: slot ? [] : SLOTS.map((name) => SLOT_WORDS[name]),
  };
}

type Pieces = ExplainedVerdict["pieces"];

function withPiece<F extends { readonly pieceId: string }>(
  pieces: Pieces,
  found: F,
  tell: (piece: PieceView, found: F) => Pick<CardPiece, "word" | "dial" | "why">,
): readonly CardPiece[] {
  const piece = pieces[found.pieceId];
  if (!piece) return [];
  const names = piece.swatches.map(({ name }) => name);
  return [{ name: piece.name, cloth: clothOf(piece, names), ...tell(piece, found) }];
}

function duplicateOf(_: PieceView, { samePiece, deltaE2000 }: Duplicate) {
  const near =
    deltaE2000 <= NO_VISIBLE_DIFFERENCE ? "no difference that a photo can show" : "very close in shade";
  return { word: samePiece ? "this very piece" : near, dial: null, why: "" };
}

function fitOf(
  piece: PieceView,
  { relation, alternatives, pair, why, lookAlike }: PieceFit,
  palette: Candidate["palette"],
) {
  const own = palette.swatches[pair[0]];
  const its = piece.swatches[pair[1]];
  const dial: DialModel | null = own && its ? [dotOf(own.oklab), dotOf(its.oklab)] : null;
  const word = relationText(relation, alternatives);
  return { word: lookAlike ? `${word}; ${LOOK_ALIKE}` : word, dial, why };
}

function dotOf(oklab: Oklab) {
  const neutral = isNeutral(oklab[0], chromaOf(oklab));
  return { css: cssOf(oklab), angle: neutral ? null : wheelFromHue(hueOf(oklab)) };
}

function looksOf({ verdict, pieces }: Pick<ExplainedVerdict, "verdict" | "pieces">): string {
  const { looks, lookExamples } = verdict;
  const [example] = lookExamples;
  if (!looks || !example) return "";
  const names = example.pieceIds.flatMap((id) => pieces[id]?.name ?? []);
  const count = looks === 1 ? "One look it finishes" : `It finishes ${looks} looks. One of them`;
  return `${count}: with ${names.join(" and ")}, ${schemeText(example.scheme, example.whole)}.`;
}
