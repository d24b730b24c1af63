import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ALL_CASES } from "./cases/all-cases.ts";
import { expectedLine, lineOf } from "./compare.ts";
import { openPages, type Pages } from "./open-pages.ts";

let pages: Pages;
beforeAll(async () => {
  pages = await openPages();
});
afterAll(() => pages.close());

describe.each(ALL_CASES)("%s, in a real browser", (_, cases) => {
  it.each(cases)("$name", async (given) => {
    const page = await pages.open(given);
    const found = await pages.read(page);
    const pictures = given.products.map((product) => product.picture);
    expect(found.products.map((product) => lineOf(product, pictures)).sort()).toEqual(
      given.products.map(expectedLine).sort(),
    );
    expect(found.kind).toBe(given.kind);
    await page.close();
  });
});
