import { describe, expect, it } from "vitest";
import { ALL_CASES } from "./cases/all-cases.ts";
import { expectedLine, lineOf } from "./compare.ts";
import { readCase } from "./read-case.ts";

describe.each(ALL_CASES)("%s, without layout", (_, cases) => {
  it.each(cases.filter((page) => !page.layout))("$name", (page) => {
    const found = readCase(page);
    const pictures = page.products.map((product) => product.picture);
    expect(found.products.map((product) => lineOf(product, pictures)).sort()).toEqual(
      page.products.map(expectedLine).sort(),
    );
    expect(found.kind).toBe(page.kind);
  });
});
