import { expect, it } from "vitest";
import { glanceAt, groupFits } from "../../lib/ui/popup/group-fits.ts";
import { filtersOf, passes } from "../../lib/ui/popup/product-filters.ts";
import { BLAZER, explainedAs, fitOf, product, SHIRT } from "./page-of.ts";

const page = [product("skirt", {}), product("coat", { kind: "owned" }), product("scarf", {})];
const explained = new Map([
  [
    "skirt",
    explainedAs("skirt", {
      looks: 3,
      pieces: [fitOf("blazer", "complementary"), fitOf("shirt", "with-neutral")],
    }),
  ],
  ["coat", explainedAs("coat", { pieces: [fitOf("shirt", "with-neutral")] })],
]);

it("offers only filters that leave something out and keep something", () => {
  expect(filtersOf(page, explained).map(({ name, count }) => [name, count])).toEqual([
    ["all", 3],
    ["looks", 1],
    ["complementary", 1],
    ["with-neutral", 2],
    ["repeats", 1],
  ]);
  expect(filtersOf([product("scarf", {})], new Map())).toEqual([]);
});

it("counts exactly the products that pass", () => {
  for (const { name, count } of filtersOf(page, explained)) {
    expect(page.filter((one) => passes(name, one, explained))).toHaveLength(count);
  }
});

it("groups pieces by relation, the verdict's best first and neutrals last", () => {
  const pieces = [
    fitOf("shirt", "with-neutral"),
    fitOf("blazer", "complementary"),
    fitOf("hat", "matching"),
    fitOf("bag", "complementary"),
  ];
  const groups = groupFits(pieces);
  expect(groups.map(({ relation }) => relation)).toEqual(["complementary", "matching", "with-neutral"]);
  expect(groups[0]?.fits.map(({ pieceId }) => pieceId)).toEqual(["blazer", "bag"]);
});

it("says a group in a few words", () => {
  const [group] = groupFits([fitOf("blazer", "triadic"), fitOf("shirt", "triadic")]);
  expect(group && glanceAt(group, { blazer: BLAZER, shirt: SHIRT })).toEqual([
    "Two of a triad: Navy blazer",
    " and 1 more",
  ]);
});
