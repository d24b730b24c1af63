import { expect, it } from "vitest";
import { colorText, slotTexts } from "../../lib/page/product-words.ts";
import { firstSlot } from "../../lib/words/first-slot.ts";
import type { PageCase } from "./cases/page-case.ts";
import { readCase } from "./read-case.ts";

const page = (body: string, more: Partial<PageCase> = {}): PageCase => ({
  name: "",
  kind: "listing",
  products: [],
  body,
  ...more,
});
const tile = (title: string, link = "/p/1"): string =>
  `<ul><li><a href="${link}"><img src="/i/a.jpg" width="200" height="260"></a><h3>${title}</h3><span>€49</span></li></ul>`;
const only = (given: PageCase) => {
  const [product] = readCase(given).products;
  if (!product) throw new Error("No product was found.");
  return product;
};
const slotIn = (given: PageCase) => {
  const product = only(given);
  return firstSlot(slotTexts(product), product.language);
};

it("tells the slot by the title, else by the data's category, the link, the page's heading", () => {
  const described = (category: string) =>
    `<script type="application/ld+json">{"@type":"Product","name":"Amalfi","category":"${category}"}</script>`;
  expect(slotIn(page(tile("Amalfi dress")))).toBe("one-piece");
  expect(slotIn(page(tile("Amalfi"), { head: described("Women > Skirts") }))).toBe("bottom");
  expect(slotIn(page(tile("Amalfi", "/p/amalfi-linen-coat")))).toBe("layer");
  expect(slotIn(page(`<h1>Shoes</h1>${tile("Amalfi")}`))).toBe("shoes");
  expect(slotIn(page(tile("Amalfi")))).toBeNull();
});

it("settles words that two languages share by the language of the page", () => {
  expect(slotIn(page(tile("Rock"), { lang: "sv" }))).toBe("layer");
  expect(slotIn(page(tile("Rock"), { lang: "de" }))).toBe("bottom");
});

it("keeps a link's variant in the key, but not where the visitor came from", () => {
  expect(only(page(tile("Amalfi", "/p/1?colour=moss&utm_source=mail#top"))).key).toBe(
    "http://shop.localhost/p/1?colour=moss",
  );
});

it("tells the colour by the data, the chosen variant and the title", () => {
  const given = page(
    `<main><img src="/i/a.jpg" width="500" height="600"><h1>Amalfi in navy</h1><span>€49</span><div class="colour-picker"><button aria-pressed="false">Forest</button><button aria-pressed="true">Deep sea</button></div><button>Add to cart</button></main>`,
    {
      head: `<script type="application/ld+json">{"@type":"Product","name":"Amalfi in navy","color":"Marine"}</script>`,
    },
  );
  expect(colorText(only(given))).toBe("Marine\nDeep sea\nAmalfi in navy");
});

it("says what it rests on", () => {
  expect(only(page(tile("Amalfi"))).evidence).toEqual(["layout"]);
  expect(only(page(tile("Amalfi").replace("<li>", '<li class="product-card">'))).evidence).toEqual([
    "markup",
    "layout",
  ]);
});

it("leaves out what stands in the page's navigation", () => {
  const { products } = readCase(page(`<nav>${tile("Menu coat")}</nav>${tile("Rain coat", "/p/2")}`));
  expect(products.map(({ title }) => title)).toEqual(["Rain coat"]);
});
