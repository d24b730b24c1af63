import type { Slot } from "../words/slot.ts";

/** Slots of which several may be worn at once: rings and scarves, not two pairs of shoes (common practice, no source). */
const STACKED: readonly Slot[] = ["jewellery", "accessory"];

/** The slots that dress the body itself, and which of them leave room for each other. */
const CORE: readonly Slot[] = ["top", "bottom", "one-piece"];

/** Slots that may be added to a look, one piece each; a look does without them. */
export function isOptional(slot: Slot): boolean {
  return !CORE.includes(slot);
}

/**
 * Whether pieces of two slots are worn at the same time (common practice, no source): a top with a bottom; a one-piece
 * instead of both; everything else beside them, one piece per slot. An unknown slot may be anything.
 */
export function wearableTogether(one: Slot | null, other: Slot | null): boolean {
  if (one === null || other === null) return true;
  if (one === other) return STACKED.includes(one);
  const bothCore = CORE.includes(one) && CORE.includes(other);
  return !bothCore || (one !== "one-piece" && other !== "one-piece");
}
