import { afterAll, beforeAll, expect, it } from "vitest";
import { DOUBTS } from "../../lib/page/doubt/doubts.ts";
import { explainPage, WHY_NOT } from "../browser/explain-page.ts";
import { openPages, type Pages } from "./open-pages.ts";

let pages: Pages;
beforeAll(async () => {
  pages = await openPages();
});
afterAll(() => pages.close());

const tile = (path: string, title: string, price: string): string =>
  `<li><a href="${path}"><img src="/i/${title.length}.jpg" width="200" height="260"></a><h3>${title}</h3><span>${price}</span></li>`;

it("has words for every doubt", () => {
  expect(DOUBTS.map(({ name }) => name).sort()).toEqual(Object.keys(WHY_NOT).sort());
});

it("says what was found by which evidence, and what was left out and why", async () => {
  const page = await pages.open({
    name: "",
    kind: "listing",
    products: [],
    body: `<nav><ul>${tile("/p/menu", "Menu coat", "€99")}</ul></nav><main><ul>${tile("/p/camp", "Camp shirt", "€49")}${tile("/p/skirt", "Midi skirt", "€69")}${tile("/collections/dresses", "All dresses", "€29")}</ul><p>Free shipping over €75</p></main>`,
  });
  const { found, rejected } = await explainPage(page);
  expect(found.map(({ title, evidence }) => [title, evidence])).toEqual([
    ["Camp shirt", ["layout"]],
    ["Midi skirt", ["layout"]],
  ]);
  expect(rejected.map(({ text, why }) => [text, why])).toEqual([
    ["Menu coat€99", WHY_NOT.standsApart],
    ["All dresses€29", WHY_NOT.leadsToAGroup],
    ["Free shipping over €75", expect.stringContaining("no price")],
  ]);
  await page.close();
});
