/** The relations of two colours on the artist's wheel, nearest first; trade terms. */
export const RELATIONS = [
  "matching",
  "monochromatic",
  "analogous",
  "triadic",
  "split-complementary",
  "complementary",
  "with-neutral",
  "none",
] as const;

export type Relation = (typeof RELATIONS)[number];
