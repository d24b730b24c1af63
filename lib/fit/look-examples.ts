import { schemeOf } from "../color/scheme.ts";
import type { Slot } from "../words/slot.ts";
import { binds, makesLook, ofSlot } from "./count-looks.ts";
import { isOneScheme } from "./one-scheme.ts";
import type { Tie } from "./tie.ts";
import type { LookFit } from "./verdict.ts";
import { isOptional } from "./wearable-together.ts";
import { whyLook } from "./why.ts";

/** Looks shown of all that are possible. */
export const LOOKS_SHOWN = 6;

/**
 * Some of the looks that `countLooks` counts, in the order of their best tie. A top, bottom or one-piece
 * gains an optional piece that repeats its shade where one is owned and the scheme allows: a shade seen twice looks
 * meant (common practice, no source).
 */
export function lookExamples(slot: Slot | null, ties: readonly Tie[]): readonly LookFit[] {
  if (slot === null) return [];
  return isOptional(slot) ? aroundOptional(ties) : aroundCore(slot, ties);
}

function aroundCore(slot: Slot, ties: readonly Tie[]): readonly LookFit[] {
  const partners =
    slot === "one-piece"
      ? ties.filter(({ owned }) => isOptional(owned.piece.slot))
      : ofSlot(ties, slot === "top" ? "bottom" : "top");
  const echoes = ties.filter(
    ({ owned, relating }) => relating.relation === "matching" && isOptional(owned.piece.slot),
  );
  return partners.slice(0, LOOKS_SHOWN).flatMap((partner) => {
    const echo = echoes.find(({ owned }) => owned.piece.slot !== partner.owned.piece.slot);
    return (echo && lookOf([partner, echo])) ?? lookOf([partner]) ?? [];
  });
}

/** Ties are best first, so the ones that bind come before the others: each pair is met once, by its better tie. */
function aroundOptional(ties: readonly Tie[]): readonly LookFit[] {
  const looks: LookFit[] = [];
  const core = ties.filter(({ owned }) => !isOptional(owned.piece.slot));
  for (const [at, tie] of core.entries()) {
    if (!binds(tie)) return looks;
    for (const look of tie.owned.piece.slot === "one-piece"
      ? [lookOf([tie])]
      : pairsOf(tie, core.slice(at + 1))) {
      if (look) looks.push(look);
      if (looks.length === LOOKS_SHOWN) return looks;
    }
  }
  return looks;
}

/** Looks of one core piece with its counterparts. */
function* pairsOf(tie: Tie, others: readonly Tie[]): Generator<LookFit | null> {
  const top = tie.owned.piece.slot === "top";
  for (const other of ofSlot(others, top ? "bottom" : "top")) {
    if (top ? makesLook(tie, other) : makesLook(other, tie)) yield lookOf([tie, other]);
  }
}

/** Null where the exact hues follow no scheme though their steps do: too near an edge to show. */
function lookOf(ties: readonly Tie[]): LookFit | null {
  const found = schemeOf(ties.flatMap(({ own, its }) => [own.point, its.point]));
  if (!isOneScheme(found)) return null;
  const { scheme, missing } = found;
  const whole = missing.length === 0;
  return {
    pieceIds: ties.map(({ owned }) => owned.piece.id),
    scheme,
    whole,
    why: whyLook(ties, scheme, whole),
  };
}
