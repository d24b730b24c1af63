import * as v from "valibot";
import { expect, it } from "vitest";
import { PRODUCTS_MOST, pageSummarySchema } from "../../lib/ui/popup/page-summary-schema.ts";
import { product, summary } from "./page-of.ts";

const read = (message: unknown) => v.safeParse(pageSummarySchema, message);
const keysOf = (message: unknown) => {
  const parsed = read(message);
  return parsed.success ? parsed.output.products.map(({ candidate }) => candidate.key) : null;
};

it("hands on what a page script sends, and survives the trip between contexts", () => {
  const page = summary([product("a", {}), product("b", null)]);
  const parsed = read(structuredClone(page));
  expect(parsed.success && parsed.output).toEqual(page);
});

it("leaves out a product that does not fit and keeps the others", () => {
  const page = { ...summary([]), products: [product("a", {}), { candidate: {} }, null, product("b", {})] };
  expect(keysOf(page)).toEqual(["a", "b"]);
});

it("lists a key once", () => {
  expect(keysOf(summary([product("a", {}), product("a", null)]))).toEqual(["a"]);
});

it("cuts a flood", () => {
  const flood = Array.from({ length: PRODUCTS_MOST + 5 }, (_, at) => product(`p${at}`, null));
  expect(keysOf(summary(flood))).toHaveLength(PRODUCTS_MOST);
});

it("drops addresses that are not of the web", () => {
  const odd = product("a", {}, { link: "javascript:alert(1)", image: "data:image/svg+xml,<svg/>" });
  const parsed = read(summary([odd]));
  const [first] = parsed.success ? parsed.output.products : [];
  expect(first).toMatchObject({ link: null, image: null });
});

it.each([
  [null],
  ["summary"],
  [{}],
  [{ ...summary([]), state: "ended" }],
  [{ ...summary([]), url: "about:blank" }],
])("refuses %j", (message) => {
  expect(read(message).success).toBe(false);
});
