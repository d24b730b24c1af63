import { expect, it } from "vitest";
import { finish } from "./finish.ts";
import { documentOf } from "./read-case.ts";
import { readAdded, readPage } from "./read-page.ts";

const tile = (slug: string, title: string): string =>
  `<li id="${slug}"><a href="/p/${slug}"><img src="/i/${slug}.jpg" width="200" height="260"></a><h3>${title}</h3><span class="cost">£49</span></li>`;
const listing = () =>
  documentOf({
    name: "",
    kind: "listing",
    products: [],
    body: `<main><h1>Shirts</h1><ul>${tile("a", "Camp shirt")}</ul></main>`,
  });

it("reads only what was added", () => {
  const doc = listing();
  const list = doc.querySelector("ul");
  list?.insertAdjacentHTML("beforeend", tile("b", "Silk blouse") + tile("c", "Boxy tee"));
  const added = [doc.getElementById("b"), doc.getElementById("c")].flatMap((element) => element ?? []);
  const found = finish(readAdded(doc, added));
  expect(found.map(({ title, price, subject, role }) => [title, price?.currency, subject, role])).toEqual([
    ["Silk blouse", "GBP", "Shirts", "tile"],
    ["Boxy tee", "GBP", "Shirts", "tile"],
  ]);
});

it("gives a product the key that a reading of the whole page gives it", () => {
  const doc = listing();
  const [whole] = finish(readPage(doc)).products;
  const [again] = finish(readAdded(doc, [...doc.querySelectorAll("li")]));
  expect(again?.key).toBe(whole?.key);
  expect(again?.root).toBe(whole?.root);
});

it("finds the tile of a price that comes later than its picture", () => {
  const doc = listing();
  const price = doc.querySelector(".cost");
  expect(finish(readAdded(doc, price ? [price] : [])).map(({ title }) => title)).toEqual(["Camp shirt"]);
});

it("finds the tile of a picture that comes later than its price", () => {
  const doc = listing();
  const picture = doc.querySelector("img");
  expect(finish(readAdded(doc, picture ? [picture] : [])).map(({ title }) => title)).toEqual(["Camp shirt"]);
});

it("takes what data says that comes before its tile", () => {
  const doc = listing();
  finish(readPage(doc));
  const script = doc.createElement("script");
  script.type = "application/ld+json";
  script.textContent = JSON.stringify({ "@type": "Product", name: "Silk blouse", color: "Damson" });
  doc.body.append(script);
  expect(finish(readAdded(doc, [script]))).toEqual([]);
  doc.querySelector("ul")?.insertAdjacentHTML("beforeend", tile("b", "Silk blouse"));
  const added = doc.getElementById("b");
  const [found] = finish(readAdded(doc, added ? [added] : []));
  expect(found?.told.color).toBe("Damson");
});

it("takes what the added data says, without reading the rest again", () => {
  const doc = listing();
  finish(readPage(doc));
  const list = doc.querySelector("ul");
  const data = { "@type": "Product", name: "Silk blouse", color: "Damson" };
  list?.insertAdjacentHTML(
    "beforeend",
    tile("b", "Silk blouse").replace(
      "</li>",
      `<script type="application/ld+json">${JSON.stringify(data)}</script></li>`,
    ),
  );
  const added = doc.getElementById("b");
  expect(finish(readAdded(doc, added ? [added] : [])).map(({ told }) => told.color)).toEqual(["Damson"]);
});

it("does not look around a clock that changes every second", () => {
  const doc = listing();
  doc.querySelector("h1")?.insertAdjacentHTML("afterend", '<p id="clock">12:04:31</p>');
  const clock = doc.getElementById("clock");
  expect(finish(readAdded(doc, clock ? [clock] : []))).toEqual([]);
});

it("finds nothing in nodes that are gone again", () => {
  const doc = listing();
  const gone = doc.querySelector("li");
  gone?.remove();
  expect(finish(readAdded(doc, gone ? [gone] : []))).toEqual([]);
});
