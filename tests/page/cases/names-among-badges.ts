import { expected, type PageCase } from "./page-case.ts";

const STYLE =
  "<style>.g{display:flex;gap:16px}.g img{width:200px;height:260px}.c{position:relative}.on{position:absolute;top:4px;left:4px}</style>";

type Row = readonly [slug: string, name: string];
const ROWS: readonly Row[] = [
  ["kaftan", "Striped kaftan"],
  ["tunic", "Ribbed tunic dress"],
  ["shawl", "Shawl in lambswool"],
];

const listing = (
  name: string,
  tile: (slug: string, name: string, at: number) => string,
  more: Partial<PageCase> = {},
): PageCase => ({
  name,
  head: STYLE,
  body: `<header><a href="/">Aldern</a></header><main><h1>New arrivals of the week</h1><div class="g">${ROWS.map(([slug, title], at) => `<div class="c">${tile(slug, title, at)}<span>€79</span></div>`).join("")}</div></main>`,
  kind: "listing",
  products: expected(...ROWS.map(([slug, title]) => `${title} | 79 | EUR | ${slug}.jpg`)),
  ...more,
});

const pictured = (slug: string, alt = ""): string =>
  `<a href="/w/${slug}"><img src="/i/${slug}.jpg" alt="${alt}"></a>`;
const of = (words: readonly string[], at: number): string => words[at % words.length] ?? "";

/** Tiles whose name stands among badges, brands and calls. */
export const NAMES_AMONG_BADGES: readonly PageCase[] = [
  listing(
    "badges in Turkish before the name, classes that shorten what they say",
    (slug, name, at) =>
      `${pictured(slug)}<div class="stmp">${of(["KARGO BEDAVA", "Reklam", "Çok Satan"], at)}</div><h3 class="prdct-desc-ttl-w"><span class="prdct-desc-nm">${name}</span></h3>`,
    { lang: "tr" },
  ),
  listing(
    "badges longer than the name, nothing a heading",
    (slug, name, at) =>
      `${pictured(slug)}<div>${of(["Livraison offerte", "Édition limitée !", "Dernières pièces"], at)}</div><div>${name}</div>`,
    { lang: "fr" },
  ),
  listing(
    "badges in Japanese and Korean",
    (slug, name, at) =>
      `${pictured(slug)}<p>${of(["送料無料", "残りわずか", "무료 배송"], at)}</p><p>${name}</p>`,
    { lang: "ja" },
  ),
  listing(
    "a long remark that lies over the picture, in no language of ours",
    (slug, name) => `${pictured(slug)}<div class="on">Pengiriman tanpa bayar</div><div>${name}</div>`,
    { layout: true, lang: "id" },
  ),
  listing(
    "the link says the name, the longest text is about the stuff",
    (slug, name) =>
      `<a href="/w/${slug}" title="${name}"><img src="/i/${slug}.jpg" alt=""></a><div>${name}</div><div>Made of wool that was combed by hand</div>`,
  ),
  listing(
    "no name to read but a badge, the link is called by it",
    (slug, name) =>
      `<a href="/w/${slug}" aria-label="${name}"><img src="/i/${slug}.jpg" alt=""></a><div>Sponsored</div>`,
  ),
  listing(
    "the brand in an element of its own before the name, in one heading",
    (slug, name) => `${pictured(slug)}<h3><span>Nebra</span> <span>${name}</span></h3>`,
  ),
  {
    ...listing(
      "a name and its colour, each in an element, in one heading",
      (slug, _, at) =>
        `${pictured(slug)}<h3><span>Striped kaftan</span> <span>${of(["Moss", "Rust", "Ink"], at)}</span></h3>`,
    ),
    products: expected(
      "Striped kaftan Moss | 79 | EUR | kaftan.jpg",
      "Striped kaftan Rust | 79 | EUR | tunic.jpg",
      "Striped kaftan Ink | 79 | EUR | shawl.jpg",
    ),
  },
];
