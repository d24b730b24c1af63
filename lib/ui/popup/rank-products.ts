import type { Verdict } from "../../fit/verdict.ts";
import type { SummaryProduct } from "../../link/messages.ts";

/**
 * Best first, as someone shops: what finishes something, then what goes with something, then what is owned already
 * and would add nothing, then what goes with nothing, then what has no answer.
 */
const ORDER: Readonly<Record<Verdict["kind"], number>> = {
  looks: 0,
  set: 1,
  goes: 2,
  "neutral-only": 3,
  duplicate: 4,
  owned: 5,
  nothing: 6,
  "empty-closet": 7,
  unreadable: 8,
};
const UNANSWERED = 9;

const placeOf = ({ brief }: SummaryProduct): number => (brief ? ORDER[brief.kind] : UNANSWERED);

/**
 * The products of a page, best first: the one that a product page is about, then by what they would do for the
 * closet, by how many pieces or looks that is, by how sure the colour is, and then as the page has them.
 */
export function rankProducts(products: readonly SummaryProduct[]): readonly SummaryProduct[] {
  return products.toSorted(
    (a, b) =>
      Number(b.role === "main") - Number(a.role === "main") ||
      placeOf(a) - placeOf(b) ||
      (b.brief?.count ?? 0) - (a.brief?.count ?? 0) ||
      b.candidate.palette.confidence - a.candidate.palette.confidence,
  );
}

/** The same products in the order they were last shown, new ones after them: a list must not move under a hand. */
export function keepOrder(
  ranked: readonly SummaryProduct[],
  shownKeys: readonly string[],
): readonly SummaryProduct[] {
  const places = new Map(shownKeys.map((key, place) => [key, place]));
  const placeIn = ({ candidate }: SummaryProduct) => places.get(candidate.key) ?? shownKeys.length;
  return ranked.toSorted((a, b) => placeIn(a) - placeIn(b));
}

/** Owned already, or the same shade in the same slot: shown as a warning. */
export const isRepeat = ({ brief }: SummaryProduct): boolean =>
  brief?.kind === "owned" || brief?.kind === "duplicate";

/** True for a product whose picture gave no colour. */
export const isUnread = ({ brief }: SummaryProduct): boolean => brief?.kind === "unreadable";
