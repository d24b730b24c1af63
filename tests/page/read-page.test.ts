import { describe, expect, it } from "vitest";
import { LOOK_ALIKE_CASES } from "./cases/look-alikes.ts";
import { MAIN_CASES } from "./cases/main-products.ts";
import { PICTURE_CASES } from "./cases/pictures.ts";
import { TILE_CASES } from "./cases/tiles.ts";
import { WHOLE_PAGES } from "./cases/whole-pages.ts";
import { expectedLine, lineOf } from "./compare.ts";
import { readCase } from "./read-case.ts";

describe.each([
  ["tiles", TILE_CASES],
  ["pictures", PICTURE_CASES],
  ["look-alikes", LOOK_ALIKE_CASES],
  ["main products", MAIN_CASES],
  ["whole pages", WHOLE_PAGES],
])("%s, without layout", (_, cases) => {
  it.each(cases.filter((page) => !page.layout))("$name", (page) => {
    const found = readCase(page);
    const pictures = page.products.map((product) => product.picture);
    expect(found.products.map((product) => lineOf(product, pictures)).sort()).toEqual(
      page.products.map(expectedLine).sort(),
    );
    expect(found.kind).toBe(page.kind);
  });
});
