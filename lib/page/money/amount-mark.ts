/** What stands in a text where an amount was. */
export const SOME = "¤";
