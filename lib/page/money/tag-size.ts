/** Characters of the longest price tag: a sentence has more. */
export const LONGEST_TAG = 90;
/** The same with the white space that its source is laid out by. */
export const LONGEST_SOURCE = 900;
/** How many elements up a price that is cut into several ("$", "49", "99") is put together again. */
export const STEPS_UP = 3;

/** A price tag has few words beside the figures ("Regular price", "From"); a sentence has more. */
export const MOST_LETTERS = 28;

/** How long the text of an element is, its white space folded; no longer one is looked at. */
export const lengthOf = ({ textContent }: Element): number =>
  textContent.length < LONGEST_SOURCE ? textContent.replace(/\s+/g, " ").length : LONGEST_SOURCE;
