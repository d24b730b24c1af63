import { describe, expect, it } from "vitest";
import { surveyOf } from "../../lib/page/survey.ts";
import type { PageCase } from "./cases/page-case.ts";
import { finish } from "./finish.ts";
import { documentOf, readCase } from "./read-case.ts";
import { readPage } from "./read-page.ts";

const page = (body: string, head = ""): PageCase => ({ name: "", kind: "listing", products: [], body, head });
const tile = (link: string, title: string, src = "/i/a.jpg"): string =>
  `<li><a href="${link}"><img src="${src}" width="200" height="260"></a><h3>${title}</h3><span>€49</span></li>`;
const json = (text: string): string => `<script type="application/ld+json">${text}</script>`;

describe("a hostile page", () => {
  it("gives titles of a megabyte only their beginning", () => {
    const [product] = readCase(page(`<ul>${tile("/p/1", "Long ".repeat(200_000))}</ul>`)).products;
    expect(product?.title.length).toBeLessThanOrEqual(300);
    expect(product?.key.length).toBeLessThanOrEqual(512);
  });

  it("gets no script or data link through, and no picture but http and data:image", () => {
    const body = `<ul>${tile("javascript:alert(1)", "Camp shirt")}${tile("data:text/html,x", "Midi skirt", "/i/b.jpg")}${tile("/p/3", "Rain coat", "javascript:alert(1)")}</ul>`;
    const { products } = readCase(page(body));
    expect(products.map(({ title, link }) => [title, link])).toEqual([
      ["Camp shirt", null],
      ["Midi skirt", null],
      ["Rain coat", "http://shop.localhost/p/3"],
    ]);
    expect(products.flatMap(({ images }) => images).every((url) => /^(https?:|data:image\/)/.test(url))).toBe(
      true,
    );
  });

  it("keeps markup in a title as text", () => {
    const [product] = readCase(
      page(`<ul>${tile("/p/1", "&lt;img src=x onerror=alert(1)&gt; shirt")}</ul>`),
    ).products;
    expect(product?.title).toBe("<img src=x onerror=alert(1)> shirt");
  });

  it("does not follow JSON as deep as it goes, nor lists as long as they are", () => {
    const deep = `${'{"@graph":['.repeat(3000)}{"@type":"Product","name":"Deep"}${"]}".repeat(3000)}`;
    const items = Array.from(
      { length: 100_000 },
      (_, i) => `{"@type":"ListItem","item":{"@type":"Product","name":"Item ${i}","url":"/p/${i}"}}`,
    );
    const long = `{"@type":"ItemList","itemListElement":[${items.join(",")}]}`;
    const { products } = readCase(page(`<ul>${tile("/p/1", "Camp shirt")}</ul>`, json(deep) + json(long)));
    expect(products.map(({ title }) => title)).toEqual(["Camp shirt"]);
  });

  it("is not led to a prototype by keys", () => {
    const head = json(
      '{"@type":"Product","__proto__":{"name":"Taken","polluted":1},"constructor":{"prototype":{"polluted":1}},"name":"Camp shirt","color":"__proto__"}',
    );
    const { products } = readCase(
      page(`<ul>${tile("/p/1", "Camp shirt")}${tile("/p/2", "constructor", "/i/b.jpg")}</ul>`, head),
    );
    expect(products.map(({ title }) => title)).toEqual(["Camp shirt", "constructor"]);
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  it("is read in many short steps", () => {
    const tiles = Array.from({ length: 300 }, (_, i) => tile(`/p/${i}`, `Shirt ${i}`, `/i/${i}.jpg`)).join(
      "",
    );
    const work = readPage(documentOf(page(`<ul>${tiles}</ul>`)));
    let steps = 0;
    while (!work.next().done) steps++;
    expect(steps).toBeGreaterThan(300 / 6);
  });

  it("is read in short steps also where a picture stands among thousands of icons", () => {
    const icons = '<img src="/i/flag.png" width="16" height="16">'.repeat(2000);
    const doc = documentOf(page(`<img src="/i/a.jpg" width="200" height="260">${icons}`));
    const work = surveyOf([doc.body]);
    let steps = 0;
    while (!work.next().done) steps++;
    expect(steps).toBeGreaterThan(2000 / 20);
  });

  it("may have no body text at all", () => {
    expect(finish(readPage(documentOf(page(""))))).toEqual({ kind: "none", products: [] });
  });
});
