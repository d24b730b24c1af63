import { expected, type PageCase } from "./page-case.ts";

const STYLE = "<style>.g{display:flex;gap:16px}.g img{width:200px;height:260px}</style>";
const SLUGS = ["hood", "muff", "snood"] as const;

/** Tiles each with its own picture, written by `picture`. */
const listing = (name: string, picture: (slug: string) => string): PageCase => ({
  name,
  head: STYLE,
  body: `<header><a href="/">Noor</a></header><main><h1>Winter</h1><div class="g">${SLUGS.map((slug) => `<div class="c"><a href="/w/${slug}">${picture(slug)}</a><h3><a href="/w/${slug}">Felted ${slug}</a></h3><p>€49</p></div>`).join("")}</div></main>`,
  kind: "listing",
  products: SLUGS.map((slug) => expected(`Felted ${slug} | 49 | EUR | ${slug}`)[0]).flatMap(
    (one) => one ?? [],
  ),
});

/** Pictures that wait behind one that all tiles share, whose name does not tell that it stands in. */
export const PICTURES_TO_COME: readonly PageCase[] = [
  listing(
    "one grey picture in every tile, the real one in data-src",
    (slug) => `<img src="/cdn/s-empty.png" data-src="/cdn/${slug}.jpg">`,
  ),
  listing(
    "a shop's mark in every tile, the real one in a srcset for later",
    (slug) =>
      `<img src="/files/mark.webp" data-lazy-srcset="/files/${slug}-300.webp 300w, /files/${slug}-900.webp 900w">`,
  ),
  listing(
    "a shared picture with an own rendition for each size, in a picture element",
    (slug) =>
      `<picture><source data-srcset="/files/${slug}.webp"><img src="/files/g.jpg" data-src="/files/${slug}.jpg"></picture>`,
  ),
  listing(
    "what shows is real, a larger rendition waits",
    (slug) => `<img src="/files/${slug}_300x300.jpg" data-src="/files/${slug}_1200x1200.jpg">`,
  ),
  listing(
    "the back that shows under the pointer waits, the front is seen in two places",
    (slug) => `<img src="/files/${slug}.jpg" data-hover-src="/files/back-of-${slug}.jpg">`,
  ),
];
