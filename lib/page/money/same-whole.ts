import type { WrittenAmount } from "./price.ts";

type Sum = Pick<WrittenAmount, "amount">;

/** Whether amounts agree but for their fractions, which may stand in an element of their own. */
export const sameWhole = (a: readonly Sum[], b: readonly Sum[]): boolean =>
  a.length === b.length && a.every(({ amount }, i) => Math.trunc(amount) === Math.trunc(b[i]?.amount ?? 0));
