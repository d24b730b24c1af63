import { expect, it } from "vitest";
import { findPlaces } from "../../lib/page/places.ts";
import { finish } from "./finish.ts";
import { documentOf } from "./read-case.ts";

/** Whether a page without a price gets its second half read: a picture and a link. */
const isLookedInto = (link: string): boolean => {
  const body = `<main><img src="/i/a.jpg" width="400" height="300"></main><footer><a href="${link}">There</a></footer>`;
  return finish(findPlaces(documentOf({ name: "", kind: "none", products: [], body }))) !== null;
};

it.each(["/pages/about", "/privacy", "/press", "/items-we-love", "/dpo", "/"])(
  "leaves a page with pictures and a link to %s alone",
  (link) => {
    expect(isLookedInto(link)).toBe(false);
  },
);

it.each(["/products/camp-shirt", "/Products/camp-shirt", "/produkt/mantel", "/p/12", "/item/12", "/dp/12"])(
  "looks into one with a link to %s",
  (link) => {
    expect(isLookedInto(link)).toBe(true);
  },
);
