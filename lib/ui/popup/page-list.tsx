import "./page-list.css";
import { useEffect, useRef, useState } from "preact/hooks";
import type { ExplainedVerdict, SummaryProduct } from "../../link/messages.ts";
import { Button } from "../button.tsx";
import { capital } from "./group-fits.ts";
import { type FilterName, filtersOf, passes } from "./product-filters.ts";
import { ProductRow } from "./product-row.tsx";
import { isUnread, keepOrder, rankProducts } from "./rank-products.ts";

/** Rows drawn at first and added by each press of the button below them. */
const ROWS_STEP = 48;

export interface PageListProps {
  readonly products: readonly SummaryProduct[];
  readonly explained: ReadonlyMap<string, ExplainedVerdict>;
  /** More answers are on their way. */
  readonly reading: boolean;
  readonly onWish: (product: SummaryProduct, wished: boolean) => void;
}

/** The products that were read, best first, with filters for what is there. */
export function PageList({ products, explained, reading, onWish }: PageListProps) {
  const [chosen, setChosen] = useState<FilterName>("all");
  const [rows, setRows] = useState(ROWS_STEP);
  const [held, setHeld] = useState(false);
  const shownKeys = useRef<readonly string[]>([]);

  const read = products.filter((product) => product.brief !== null && !isUnread(product));
  const ranked = rankProducts(read);
  const ordered = reading && held ? keepOrder(ranked, shownKeys.current) : ranked;
  const filters = filtersOf(read, explained);
  const filter = filters.some(({ name }) => name === chosen) ? chosen : "all";
  const listed = ordered.filter((product) => passes(filter, product, explained));
  useEffect(() => {
    shownKeys.current = ordered.map(({ candidate }) => candidate.key);
  });

  return (
    <div class="page-list">
      {filters.length > 0 && (
        <fieldset class="filters">
          <legend class="unseen">Show</legend>
          {filters.map(({ name, label, count }) => (
            <label key={name} class="filter">
              <input
                type="radio"
                name="filter"
                class="unseen"
                checked={name === filter}
                onChange={() => setChosen(name)}
              />
              <span>
                {capital(label)} <span class="filter-count">{count}</span>
              </span>
            </label>
          ))}
        </fieldset>
      )}
      <ul
        class="rows"
        aria-label="Products, best first"
        onPointerEnter={() => setHeld(true)}
        onPointerLeave={() => setHeld(false)}
        onFocusIn={() => setHeld(true)}
        onFocusOut={() => setHeld(false)}
      >
        {listed.slice(0, rows).map((product) => (
          <ProductRow
            key={product.candidate.key}
            product={product}
            explained={explained.get(product.candidate.key)}
            onWish={onWish}
          />
        ))}
      </ul>
      {listed.length > rows && (
        <Button onClick={() => setRows(rows + ROWS_STEP)}>
          Show {Math.min(ROWS_STEP, listed.length - rows)} more
        </Button>
      )}
    </div>
  );
}
