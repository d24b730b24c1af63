/** Characters of the longest price tag: a sentence has more. */
export const LONGEST_TAG = 90;
/** The same with the white space that its source is laid out by. */
export const LONGEST_SOURCE = 900;
/** How many elements up a price that is cut into several ("$", "49", "99") is put together again. */
export const STEPS_UP = 3;
