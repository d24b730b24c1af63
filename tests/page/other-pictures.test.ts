import { expect, it } from "vitest";
import { otherPictures } from "../../lib/page/picture/other-pictures.ts";
import { finish } from "./finish.ts";
import { documentOf } from "./read-case.ts";
import { readPage } from "./read-page.ts";

/** A picture that has come, `width` by `height` pixels; `come` false: it has not. */
const picture = (file: string, width = 600, height = 800, come = true): string =>
  `<img src="${file.startsWith("http") ? file : `/i/${file}`}" width="300" height="400" data-natural="${come ? `${width} ${height}` : "0 0"}">`;

/** Files of the other pictures of the first product of a page, its pictures as a browser would have found them. */
function othersIn(body: string): string[] {
  const doc = documentOf({ name: "", kind: "listing", products: [], body });
  for (const image of doc.querySelectorAll("img")) {
    const [width, height] = (image.dataset.natural ?? "0 0").split(" ").map(Number);
    Object.defineProperties(image, {
      complete: { value: width !== 0 },
      naturalWidth: { value: width },
      naturalHeight: { value: height },
    });
  }
  const [product] = finish(readPage(doc)).products;
  if (!product) throw new Error("No product was found.");
  return otherPictures(product).map(({ src }) => src.replace(/.*\//, ""));
}

const tile = (pictures: string, more = ""): string =>
  `<ul><li><a href="/p/1">${pictures}<h3>Amalfi dress</h3></a><span>€49</span>${more}</li></ul>`;
const productPage = (gallery: string, after = ""): string =>
  `<main><div><div class="gallery">${gallery}</div><div><h1>Boiled wool coat</h1><p>€289</p><button>Add to bag</button></div></div>${after}</main>`;

it("are what a tile shows under the pointer, once it has come", () => {
  expect(othersIn(tile(picture("front.jpg") + picture("back.jpg")))).toEqual(["back.jpg"]);
  expect(othersIn(tile(picture("front.jpg") + picture("back.jpg", 600, 800, false)))).toEqual([]);
  expect(othersIn(tile(picture("front.jpg")))).toEqual([]);
});

it("are no other renditions of the picture that shows", () => {
  const front = picture("front_600x800.jpg?v=2");
  expect(othersIn(tile(front + picture("front_300x.jpg?v=2") + picture("front@2x.jpg")))).toEqual([]);
  expect(othersIn(tile(picture("coat-1.jpg") + picture("coat-2.jpg")))).toEqual(["coat-2.jpg"]);
});

it("are no pictures of another shape in a tile, as seals and swatches are", () => {
  expect(othersIn(tile(picture("front.jpg") + picture("seal.png", 300, 300)))).toEqual([]);
});

it("are no pictures of the other colours there are", () => {
  const colours = `<div class="colour-list">${picture("moss.jpg")}${picture("rust.jpg")}</div>`;
  expect(othersIn(tile(picture("front.jpg") + picture("back.jpg"), colours))).toEqual(["back.jpg"]);
  expect(othersIn(productPage(picture("a.jpg") + picture("b.jpg") + colours))).toEqual(["b.jpg"]);
});

it("are the slides and thumbnails of a product page's gallery, three at most, and nothing beside it", () => {
  const slides = ["a", "b"].map((name) => `<div>${picture(`${name}.jpg`)}</div>`).join("");
  const thumbs = ["a", "b", "c", "d", "e"].map((name) => picture(`${name}_90x120.jpg`, 90, 120)).join("");
  const kin = `<section><h2>You may also like</h2>${tile(picture("kin.jpg"))}</section>`;
  const page = productPage(`${slides}<div class="thumbs">${thumbs}</div>`, picture("chart.png") + kin);
  expect(othersIn(page)).toEqual(["b.jpg", "c_90x120.jpg", "d_90x120.jpg"]);
});

it("are not looked for without end", () => {
  const many = Array.from({ length: 400 }, (_, i) => picture(`seal-${i}.png`, 300, 300)).join("");
  expect(othersIn(tile(picture("front.jpg") + many + picture("back.jpg")))).toEqual([]);
});
