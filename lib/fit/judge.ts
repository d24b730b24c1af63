import type { ColorPoint } from "../color/color-point.ts";
import { looksAlikeTo, type Vision } from "../color/color-vision.ts";
import { oftenWornAsNeutral } from "../color/often-worn-as-neutral.ts";
import { type PackedColors, packColors } from "../color/packed-colors.ts";
import { cautionOf } from "./caution-of.ts";
import { closetNames } from "./closet-names.ts";
import { compareTies } from "./compare-ties.ts";
import { countLooks } from "./count-looks.ts";
import { compareDuplicates, duplicateOf } from "./duplicate-of.ts";
import { headlineOf } from "./headline.ts";
import { lazily } from "./lazily.ts";
import { lookExamples } from "./look-examples.ts";
import { type OwnedPiece, type PreparedPiece, type ShownSwatch, shownSwatches } from "./prepared-piece.ts";
import { bestTie, type Tie } from "./tie.ts";
import type { Candidate, Duplicate, PieceFit, Verdict } from "./verdict.ts";
import { wearableTogether } from "./wearable-together.ts";
import { whyTie } from "./why.ts";

/** A closet whose colours are worked out, ready for any number of candidates. */
export interface PreparedCloset {
  readonly pieces: readonly PreparedPiece[];
  /** The swatches that count, of all pieces in their order. */
  readonly colors: PackedColors;
  readonly vision: Vision | null;
}

/**
 * Works out the colours of every piece once. `vision` is how the person says they see colours, null for as most people do.
 * Throws `ColorError` for a colour that is none.
 */
export function prepareCloset(pieces: readonly OwnedPiece[], vision: Vision | null = null): PreparedCloset {
  const points: ColorPoint[] = [];
  const prepared = pieces.map((piece): PreparedPiece => {
    const shown = shownSwatches(piece.swatches);
    const first = points.length;
    points.push(...shown.map(({ point }) => point));
    return { piece, shown, first };
  });
  return { pieces: prepared, colors: packColors(points), vision };
}

/**
 * What a product would do for a closet. The order of the pieces does not matter. `pieces` and `lookExamples`
 * are worked out when they are first read, from the closet: a badge never asks for them, and many verdicts may be kept.
 */
export function judge(candidate: Candidate, closet: PreparedCloset): Verdict {
  const { palette, slot } = candidate;
  const shown = shownSwatches(palette.swatches);
  if (shown.length === 0) return nothingSaid("unreadable", "Can't read this picture");
  if (closet.pieces.length === 0) return nothingSaid("empty-closet", "Your closet is empty");

  const { duplicates, ties } = compare(candidate, shown, closet);
  const looks = countLooks(slot, ties);
  const wornAsNeutral = () =>
    closet.pieces
      .filter(({ piece }) => wearableTogether(slot, piece.slot))
      .filter(({ shown: [statement] }) => statement && oftenWornAsNeutral(statement.swatch.oklab))
      .map(({ piece }) => piece.name)
      .toSorted()[0];
  const closeMatch =
    duplicates.some(({ samePiece }) => !samePiece) ||
    ties.some(({ relating }) => relating.relation === "matching");
  const ordered = lazily(() => compare(candidate, shown, closet).ties.sort(compareTies));
  const pieces = lazily(() => ordered().map((tie) => pieceFit(tie, closet.vision)));
  const examples = lazily(() => lookExamples(slot, ordered()));
  return {
    ...headlineOf({ slot, confidence: palette.confidence, shown, duplicates, ties, looks, wornAsNeutral }),
    duplicates,
    get pieces() {
      return pieces();
    },
    looks,
    get lookExamples() {
      return examples();
    },
    caution: cautionOf(palette, closeMatch),
  };
}

/** Duplicates, best first, and in any order the pieces that a candidate has a named relation to and may be worn with. */
function compare(candidate: Candidate, shown: readonly ShownSwatch[], closet: PreparedCloset) {
  const { slot, palette } = candidate;
  const names = closetNames(shown, closet.colors, palette.confidence);
  const duplicates: Duplicate[] = [];
  const ties: Tie[] = [];
  for (const owned of closet.pieces) {
    const duplicate = duplicateOf(candidate, shown, owned, names);
    if (duplicate) duplicates.push(duplicate);
    else if (wearableTogether(slot, owned.piece.slot)) {
      const tie = bestTie(shown, owned, names, palette.confidence);
      if (tie) ties.push(tie);
    }
  }
  return { duplicates: duplicates.sort(compareDuplicates), ties };
}

function nothingSaid(kind: Verdict["kind"], headline: string): Verdict {
  return { kind, headline, count: 0, duplicates: [], pieces: [], looks: 0, lookExamples: [], caution: null };
}

function pieceFit(tie: Tie, vision: Vision | null): PieceFit {
  const { owned, own, its, relating } = tie;
  return {
    pieceId: owned.piece.id,
    relation: relating.relation,
    alternatives: relating.alternatives,
    deltaE2000: relating.deltaE2000,
    pair: [own.index, its.index],
    why: whyTie(tie),
    lookAlike: vision !== null && looksAlikeTo(vision, own.point.oklab, its.point.oklab),
  };
}
