import type { Relation } from "../../lib/color/relation-name.ts";
import type { Verdict } from "../../lib/fit/verdict.ts";
import type {
  ExplainedVerdict,
  PageSummary,
  PieceView,
  SummaryProduct,
  VerdictBrief,
} from "../../lib/link/messages.ts";

/** A product whose key and title are its name. */
export function product(
  name: string,
  brief: Partial<VerdictBrief> | null,
  more: Partial<SummaryProduct> = {},
): SummaryProduct {
  return {
    candidate: {
      key: name,
      title: name,
      slot: "bottom",
      palette: { swatches: [{ oklab: [0.4, 0.15, 0.08], share: 1 }], confidence: 0.9, evidence: ["pixels"] },
    },
    role: "tile",
    price: { amount: 49, currency: "EUR" },
    image: `https://cdn.example/${encodeURIComponent(name)}.jpg`,
    link: `https://shop.example/${encodeURIComponent(name)}`,
    brief: brief && {
      key: name,
      headline: "Goes with 1 of yours",
      kind: "goes",
      count: 1,
      names: ["red"],
      ...brief,
    },
    ...more,
  };
}

/** A page that has read everything, unless told otherwise. */
export function summary(
  products: readonly SummaryProduct[],
  state: PageSummary["state"] = "done",
): PageSummary {
  return {
    url: "https://shop.example/skirts",
    kind: products.length > 0 ? "listing" : "none",
    state,
    products,
    timings: { found: 5, firstBadge: null, lastBadge: null },
  };
}

export const BLAZER: PieceView = {
  id: "blazer",
  name: "Navy blazer",
  slot: "layer",
  swatches: [{ oklab: [0.3, -0.02, -0.09], share: 1, name: "navy" }],
};

export const SHIRT: PieceView = {
  id: "shirt",
  name: "White shirt",
  slot: "top",
  swatches: [{ oklab: [0.97, 0, 0], share: 1, name: "white" }],
};

/** One fit of the first swatches. */
export const fitOf = (
  pieceId: string,
  relation: Relation,
  alternatives: readonly Relation[] = [],
  lookAlike = false,
): Verdict["pieces"][number] => ({
  pieceId,
  relation,
  alternatives,
  deltaE2000: 40,
  pair: [0, 0],
  why: "",
  lookAlike,
});

/** A whole verdict that goes with the given fits. */
export function explainedAs(key: string, verdict: Partial<Verdict>, wished = false): ExplainedVerdict {
  return {
    key,
    names: ["red"],
    verdict: {
      headline: "Goes with 1 of yours",
      kind: "goes",
      count: 1,
      duplicates: [],
      pieces: [],
      looks: 0,
      lookExamples: [],
      caution: null,
      ...verdict,
    },
    pieces: { blazer: BLAZER, shirt: SHIRT },
    wished,
  };
}
