import { RELATIONS, type Relation } from "../../color/relation-name.ts";
import type { ExplainedVerdict, SummaryProduct } from "../../link/messages.ts";
import { RELATION_WORDS } from "../words.ts";
import { isRepeat } from "./rank-products.ts";

/** Which products the list shows. */
export type FilterName = "all" | "looks" | "repeats" | Exclude<Relation, "none">;

/** One filter with how many products pass it. */
export interface Filter {
  readonly name: FilterName;
  readonly label: string;
  readonly count: number;
}

type Explained = ReadonlyMap<string, ExplainedVerdict>;

const FILTERS: readonly FilterName[] = [
  "all",
  "looks",
  ...RELATIONS.filter((relation) => relation !== "none"),
  "repeats",
];

function labelOf(name: FilterName): string {
  if (name === "all") return "All";
  if (name === "looks") return "finishes looks";
  return name === "repeats" ? "owned shades" : RELATION_WORDS[name];
}

/** Does this product pass the filter? A relation asks for at least one owned piece in it. */
export function passes(name: FilterName, product: SummaryProduct, explained: Explained): boolean {
  if (name === "all") return true;
  if (name === "repeats") return isRepeat(product);
  const verdict = explained.get(product.candidate.key)?.verdict;
  if (!verdict) return false;
  if (name === "looks") return verdict.looks > 0;
  return verdict.pieces.some(({ relation }) => relation === name);
}

/** The filters that would leave some products out and keep some; none where there is nothing to choose. */
export function filtersOf(products: readonly SummaryProduct[], explained: Explained): readonly Filter[] {
  const filters = FILTERS.map((name) => ({
    name,
    label: labelOf(name),
    count: products.filter((product) => passes(name, product, explained)).length,
  })).filter(({ name, count }) => name === "all" || (count > 0 && count < products.length));
  return filters.length > 1 ? filters : [];
}
