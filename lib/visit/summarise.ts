import type { PageSummary, SummaryProduct } from "../link/messages.ts";
import { candidateOf, type Tracked } from "./tracked.ts";

/** The page at a glance. */
export function summarise(
  page: Pick<PageSummary, "url" | "kind" | "state" | "timings">,
  products: Iterable<Tracked>,
): PageSummary {
  return { ...page, products: Array.from(products, productOf) };
}

function productOf(tracked: Tracked): SummaryProduct {
  const { product, source, brief } = tracked;
  const { role, price, link } = product;
  return { candidate: candidateOf(tracked), role, price, link, image: source.url || null, brief };
}
