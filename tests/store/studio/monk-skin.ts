/**
 * The ten tones of the Monk Skin Tone Scale, lightest first.
 * Source: Ellis Monk / Google, "Monk Skin Tone Scale", 2022, skintone.google.
 */
export const MONK_SKIN = [
  "#f6ede4",
  "#f3e7db",
  "#f7ead0",
  "#eadaba",
  "#d7bd96",
  "#a07e56",
  "#825c43",
  "#604134",
  "#3a312a",
  "#292420",
] as const;
