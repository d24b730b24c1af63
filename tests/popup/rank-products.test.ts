import fc from "fast-check";
import { expect, it } from "vitest";
import type { Verdict } from "../../lib/fit/verdict.ts";
import { keepOrder, rankProducts } from "../../lib/ui/popup/rank-products.ts";
import { product } from "./page-of.ts";

const KINDS: readonly Verdict["kind"][] = [
  "looks",
  "set",
  "goes",
  "neutral-only",
  "duplicate",
  "owned",
  "nothing",
  "empty-closet",
  "unreadable",
];
const keys = (products: readonly { candidate: { key: string } }[]) =>
  products.map(({ candidate }) => candidate.key);

it("puts what finishes most first, what is owned after what goes, and what has no answer last", () => {
  const page = [
    product("waits", null),
    product("owned", { kind: "owned" }),
    product("one look", { kind: "looks", count: 1 }),
    product("goes", { kind: "goes", count: 9 }),
    product("four looks", { kind: "looks", count: 4 }),
    product("nothing", { kind: "nothing", count: 0 }),
  ];
  expect(keys(rankProducts(page))).toEqual(["four looks", "one look", "goes", "owned", "nothing", "waits"]);
});

it("keeps the product of a product page on top", () => {
  const page = [
    product("look", { kind: "looks", count: 4 }),
    product("main", { kind: "nothing" }, { role: "main" }),
  ];
  expect(keys(rankProducts(page))[0]).toBe("main");
});

const pageOf = fc
  .uniqueArray(fc.tuple(fc.string({ minLength: 1 }), fc.constantFrom(...KINDS, null), fc.nat(20)), {
    selector: ([key]) => key,
  })
  .map((rows) => rows.map(([key, kind, count]) => product(key, kind && { kind, count })));

it("never loses a product, and does not move what is ranked", () => {
  fc.assert(
    fc.property(pageOf, (page) => {
      const ranked = rankProducts(page);
      expect(keys(ranked).toSorted()).toEqual(keys(page).toSorted());
      expect(keys(rankProducts(ranked))).toEqual(keys(ranked));
    }),
  );
});

it("keeps shown products in their places and appends new ones in their rank", () => {
  fc.assert(
    fc.property(pageOf, fc.nat(10), (page, shown) => {
      const shownKeys = keys(page).slice(0, shown);
      const kept = keys(keepOrder(rankProducts(page), shownKeys));
      expect(kept.slice(0, shownKeys.length)).toEqual(shownKeys);
      expect(kept.slice(shownKeys.length)).toEqual(
        keys(rankProducts(page)).filter((key) => !shownKeys.includes(key)),
      );
    }),
  );
});
