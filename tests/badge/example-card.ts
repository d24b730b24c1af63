import type { BadgeModel } from "../../lib/badge/badge-model.ts";
import type { CardModel } from "../../lib/badge/card-model.ts";

const crimson = { css: "oklab(0.5 0.17 0.08)", share: 0.7, name: "crimson" };
const cream = { css: "oklab(0.93 0 0.03)", share: 0.3, name: "cream" };
const navy = { css: "oklab(0.32 0.01 -0.07)", share: 1, name: "navy" };
const forest = { css: "oklab(0.45 -0.09 0.05)", share: 1, name: "forest green" };
const black = { css: "oklab(0.2 0 0)", share: 1, name: "black" };

/** An invented product on a badge. */
export const exampleBadge: BadgeModel = {
  state: "ready",
  words: "Goes with 5 of yours",
  count: 5,
  cloth: [crimson, cream],
  title: "Striped boat-neck shirt",
  note: "",
};

/** The same on a card. */
export const exampleCard: CardModel = {
  title: "Striped boat-neck shirt",
  headline: "Finishes 4 looks",
  cloth: [crimson, cream],
  cautions: [
    "A photo cannot show whether two fabrics match exactly. Compare them in daylight before you rely on it.",
  ],
  duplicates: [
    { name: "Crew-neck tee", cloth: [{ ...crimson, share: 1 }], word: "same shade", dial: null, why: "" },
  ],
  pieces: [
    {
      name: "Wide-leg trousers",
      cloth: [forest],
      word: "complementary, or split-complementary",
      dial: [
        { css: crimson.css, angle: 355 },
        { css: forest.css, angle: 178 },
      ],
      why: "Crimson and forest green lie opposite each other on the artist's wheel.",
    },
    {
      name: "Single-breasted blazer with a rather long name",
      cloth: [navy, cream],
      word: "two of a triad",
      dial: [
        { css: crimson.css, angle: 355 },
        { css: navy.css, angle: 250 },
      ],
      why: "",
    },
    {
      name: "Ankle boots",
      cloth: [black],
      word: "with a neutral",
      dial: [
        { css: crimson.css, angle: 355 },
        { css: black.css, angle: null },
      ],
      why: "",
    },
  ],
  looks: "One of the four: with your wide-leg trousers and ankle boots, complementary.",
  wished: false,
  owned: false,
  corrected: false,
  choices: [crimson, cream, navy, forest, black],
  slots: [],
};
