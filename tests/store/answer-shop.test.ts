import { expect, it } from "vitest";
import { CATALOGUE } from "./catalogue.ts";
import { answerShop } from "./pages/answer-shop.ts";
import { SECTIONS } from "./pages/layout.ts";

const ADDRESSES = { shopUrl: "http://shop.localhost:1", cdnUrl: "http://cdn.localhost:2" };

function get(path: string): { status: number; body: string } {
  const { status, body } = answerShop(new URL(path, ADDRESSES.shopUrl), ADDRESSES);
  return { status, body: String(body) };
}

/** Every block of structured data on a page, parsed. */
const dataOn = (body: string): Record<string, unknown>[] =>
  [...body.matchAll(/<script type="application\/ld\+json">(.*?)<\/script>/gs)].map(([, json = ""]) =>
    JSON.parse(json),
  );

const count = (body: string, part: string): number => body.split(part).length - 1;

it("answers every page of its menus and says 404 elsewhere", () => {
  const { body } = get("/");
  const links = [...body.matchAll(/href="(\/[^"]*)"/g)].map(([, link = "/"]) => link);
  expect(links.length).toBeGreaterThan(60);
  for (const link of new Set(links)) expect(get(link).status, link).toBe(200);
  for (const path of ["/bare", "/endless", "/tiles", "/journal/the-button-drawer"])
    expect(get(path).status, path).toBe(200);
  for (const path of ["/no", "/product/no", "/journal/no"]) expect(get(path).status, path).toBe(404);
});

it("lists 48 products in tiles and in an ItemList that agree", () => {
  const { body } = get("/");
  expect(count(body, '<li class="tile">')).toBe(48);
  const [list] = dataOn(body);
  expect(list).toMatchObject({ "@type": "ItemList", numberOfItems: 48 });
  const items = list?.itemListElement as {
    item: { name: string; offers: { price: string; priceCurrency: string } };
  }[];
  expect(items.map(({ item }) => [item.name, Number(item.offers.price), item.offers.priceCurrency])).toEqual(
    CATALOGUE.map(({ title, price }) => [title, price, "GBP"]),
  );
});

it("divides the whole stock among its sections", () => {
  const tiles = SECTIONS.map(({ path }) => count(get(path).body, '<li class="tile">'));
  expect(tiles.reduce((sum, number) => sum + number, 0)).toBe(48);
  expect(Math.min(...tiles)).toBeGreaterThan(0);
});

it("gives every product page a ProductGroup with its colours, and related products", () => {
  for (const product of CATALOGUE) {
    const { body } = get(`/product/${product.id}`);
    const [group] = dataOn(body);
    expect(group).toMatchObject({ "@type": "ProductGroup", name: product.title });
    const variants = group?.hasVariant as { color: string; image: string[]; offers: { price: string } }[];
    expect(variants.map(({ color }) => color)).toEqual(product.variants.map(({ color }) => color));
    for (const { image, offers } of variants) {
      expect(image[0]).toMatch(/^http:\/\/cdn\.localhost:2\/(media|photos)\/.*\.jpg\?width=960$/);
      expect(Number(offers.price)).toBe(product.price);
    }
    expect(count(body, '<li class="tile">')).toBe(4);
  }
});

it("opens a product page on the colour that its address names", () => {
  const { body } = get("/product/marla-wrap-dress-in-cobalt?colour=emerald");
  expect(body).toContain('<b class="chosen">Emerald</b>');
  expect(body).toMatch(/class="stage"><img src="[^"]*--emerald-1\.jpg/);
});

it("has a bare listing without structured data or telling names", () => {
  const { body } = get("/bare");
  expect(dataOn(body)).toEqual([]);
  const main = body.slice(body.indexOf("<main"), body.indexOf("</main>"));
  expect([...main.matchAll(/class="([^"]*)"/g)].every(([, name = ""]) => /^q\d$/.test(name))).toBe(true);
  expect(count(main, 'class="q1"')).toBe(48);
  expect(count(main, "background-image")).toBe(12);
});

it("grows its endless listing in batches up to the count", () => {
  const first = get("/endless?count=60").body;
  expect(count(first, '<li class="tile">')).toBe(24);
  expect(count(first, "data-src=")).toBe(24);
  expect(count(get("/endless/more?from=24&count=60").body, '<li class="tile">')).toBe(24);
  expect(count(get("/endless/more?from=48&count=60").body, '<li class="tile">')).toBe(12);
});

it("puts any number of tiles on one page, each with an address of its own", () => {
  const { body } = get("/tiles?n=240");
  const links = [...body.matchAll(/<a class="frame" href="([^"]*)"/g)].map(([, link]) => link);
  expect(new Set(links).size).toBe(240);
});

it("has a journal of picture cards without a product or a price", () => {
  const { body } = get("/journal");
  const main = body.slice(body.indexOf("<main"), body.indexOf("</main>"));
  expect(count(main, '<article class="story">')).toBe(6);
  expect(main).not.toContain("£");
  expect(dataOn(body)).toEqual([]);
});
