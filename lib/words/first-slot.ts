import { readSlot } from "./read-slot.ts";
import type { Slot } from "./slot.ts";

/**
 * Where a piece is worn by the first of its texts that says so, strongest first: title, category, address, heading.
 * @param language the page's own (BCP 47), or ""; it settles words that two languages share
 */
export function firstSlot(texts: readonly string[], language: string): Slot | null {
  for (const text of texts) {
    const slot = readSlot(text, language);
    if (slot) return slot;
  }
  return null;
}
