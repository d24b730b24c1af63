import type { AskWorker, ExplainedVerdict, SummaryProduct } from "../../link/messages.ts";
import { sentenceOf } from "./sentence-of.ts";

/** Products explained by one request: few enough that the first rows fill at once. */
export const EXPLAIN_BATCH = 12;

/** Keeps whole verdicts of the products that are wanted. */
export interface Explainer {
  /** Fetches what is missing or no longer true, the first of the list first. */
  want(products: readonly SummaryProduct[]): void;
  /** The closet changed: whatever was fetched is fetched again, and shown until then. */
  renew(): void;
  /** Notes at once whether a product is on the wishlist. */
  markWished(key: string, wished: boolean): void;
}

/** Changes whenever the answer may: a product read anew or corrected, or judged anew. */
const signatureOf = ({ candidate, brief }: SummaryProduct): string =>
  JSON.stringify([candidate.palette.swatches, candidate.slot, brief]);

/**
 * @param ask the worker
 * @param show told of every change
 * @param fail told the sentence of a request that failed; its products are asked for again when next wanted
 */
export function createExplainer(
  ask: AskWorker,
  show: (explained: ReadonlyMap<string, ExplainedVerdict>) => void,
  fail: (problem: string) => void,
): Explainer {
  const explained = new Map<string, ExplainedVerdict>();
  const signatures = new Map<string, string>();
  let wanted: readonly SummaryProduct[] = [];
  let asking = false;

  const publish = () => show(new Map(explained));
  const nextBatch = () =>
    wanted
      .filter((product) => product.brief && signatures.get(product.candidate.key) !== signatureOf(product))
      .slice(0, EXPLAIN_BATCH);

  async function work(): Promise<void> {
    if (asking) return;
    asking = true;
    for (let batch = nextBatch(); batch.length > 0; batch = nextBatch()) {
      for (const product of batch) signatures.set(product.candidate.key, signatureOf(product));
      try {
        const verdicts = await ask("explain", { candidates: batch.map(({ candidate }) => candidate) });
        for (const verdict of verdicts) explained.set(verdict.key, verdict);
        publish();
      } catch (error) {
        for (const { candidate } of batch) signatures.delete(candidate.key);
        fail(sentenceOf(error));
        break;
      }
    }
    asking = false;
  }

  return {
    want(products) {
      wanted = products;
      void work();
    },
    renew() {
      signatures.clear();
      void work();
    },
    markWished(key, wished) {
      const verdict = explained.get(key);
      if (verdict) explained.set(key, { ...verdict, wished });
      publish();
    },
  };
}
