import type { Slot } from "../words/slot.ts";
import { followOneScheme, hueStepOf } from "./one-scheme.ts";
import { rankOf, type Tie } from "./tie.ts";
import { isOptional } from "./wearable-together.ts";

/** Ties of one slot that stand alike in every look: the same hues, and the same answer to whether they bind. */
interface Group {
  readonly own: number;
  readonly its: number;
  readonly binds: boolean;
  count: number;
}

/**
 * How many looks a candidate makes possible, from its ties (which all have a named relation):
 * a top or bottom makes one with each of its counterparts; a one-piece one with each optional piece;
 * an optional piece one with each owned one-piece, and with each owned top and bottom, whose colours follow one scheme with it
 * and with at least one of which it shares a shade or a relation of hues. Where it is worn must be known.
 */
export function countLooks(slot: Slot | null, ties: readonly Tie[]): number {
  if (slot === null) return 0;
  if (slot === "top") return ofSlot(ties, "bottom").length;
  if (slot === "bottom") return ofSlot(ties, "top").length;
  if (slot === "one-piece") return ties.filter(({ owned }) => isOptional(owned.piece.slot)).length;
  return ofSlot(ties, "one-piece").filter(binds).length + countPairs(ties);
}

/** The ties with pieces of one slot. */
export function ofSlot(ties: readonly Tie[], slot: Slot): readonly Tie[] {
  return ties.filter(({ owned }) => owned.piece.slot === slot);
}

/** Whether a tie is more than a neutral beside a colour. */
export function binds({ relating }: Tie): boolean {
  return rankOf(relating) < 2;
}

/** Whether a top and a bottom with their ties to an optional candidate make a look. */
export function makesLook(top: Tie, bottom: Tie): boolean {
  return (
    (binds(top) || binds(bottom)) &&
    followOneScheme(
      hueStepOf(top.own.point),
      hueStepOf(top.its.point),
      hueStepOf(bottom.own.point),
      hueStepOf(bottom.its.point),
    )
  );
}

function countPairs(ties: readonly Tie[]): number {
  const bottoms = groupsOf(ofSlot(ties, "bottom"));
  let count = 0;
  for (const top of groupsOf(ofSlot(ties, "top"))) {
    for (const bottom of bottoms) {
      if (!top.binds && !bottom.binds) continue;
      if (followOneScheme(top.own, top.its, bottom.own, bottom.its)) count += top.count * bottom.count;
    }
  }
  return count;
}

function groupsOf(ties: readonly Tie[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const tie of ties) {
    const group = {
      own: hueStepOf(tie.own.point),
      its: hueStepOf(tie.its.point),
      binds: binds(tie),
      count: 1,
    };
    const key = `${group.own} ${group.its} ${group.binds}`;
    const known = groups.get(key);
    if (known) known.count += 1;
    else groups.set(key, group);
  }
  return [...groups.values()];
}
