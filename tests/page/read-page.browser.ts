import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { LOOK_ALIKE_CASES } from "./cases/look-alikes.ts";
import { MAIN_CASES } from "./cases/main-products.ts";
import { PICTURE_CASES } from "./cases/pictures.ts";
import { TILE_CASES } from "./cases/tiles.ts";
import { WHOLE_PAGES } from "./cases/whole-pages.ts";
import { expectedLine, lineOf } from "./compare.ts";
import { openPages, type Pages } from "./open-pages.ts";

let pages: Pages;
beforeAll(async () => {
  pages = await openPages();
});
afterAll(() => pages.close());

describe.each([
  ["tiles", TILE_CASES],
  ["pictures", PICTURE_CASES],
  ["look-alikes", LOOK_ALIKE_CASES],
  ["main products", MAIN_CASES],
  ["whole pages", WHOLE_PAGES],
])("%s, in a real browser", (_, cases) => {
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
