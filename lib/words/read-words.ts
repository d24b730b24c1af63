export { readColorTerms } from "./read-color-terms.ts";
export { readSlot } from "./read-slot.ts";
