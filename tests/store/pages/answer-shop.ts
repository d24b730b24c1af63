import { CATALOGUE, productOf } from "../catalogue.ts";
import { barePage } from "./bare-page.ts";
import { endlessPage, moreTiles } from "./endless-page.ts";
import type { Addresses } from "./html.ts";
import { journalPage, storyPage } from "./journal-page.ts";
import { layout, SECTIONS } from "./layout.ts";
import { listingPage, tilesPage } from "./listing-page.ts";
import { productPage } from "./product-page.ts";

/** What a server sends back. */
export interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: string | Uint8Array;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Most tiles that a page may be asked for. */
const MOST_TILES = 960;

const page = (body: string, status = 200): Answer => ({ status, type: "text/html; charset=utf-8", body });
const note = (title: string, words: string): string =>
  layout(title, `<div class="prose"><h1>${title}</h1><p>${words}</p></div>`);

/** A whole number out of the query, within 0…960. */
function numberIn(url: URL, name: string, otherwise: number): number {
  const number = Number(url.searchParams.get(name) ?? otherwise);
  return Number.isFinite(number) ? Math.min(MOST_TILES, Math.max(0, Math.floor(number))) : otherwise;
}

/** The page of the shop at an address. */
export function answerShop(url: URL, addresses: Addresses): Answer {
  const path = url.pathname;
  const section = SECTIONS.find((known) => known.path === path);
  if (section) {
    const products = CATALOGUE.filter(({ slot }) => section.slots.some((known) => known === slot));
    return page(listingPage(addresses, section.name, products));
  }
  const [, folder, name = ""] = path.split("/");
  if (folder === "product") {
    const product = productOf(name);
    if (product) return page(productPage(addresses, product, url.searchParams.get("colour")));
  }
  if (folder === "journal" && name) {
    const story = storyPage(name);
    if (story) return page(story);
  }
  switch (path) {
    case "/":
      return page(listingPage(addresses, "New this season", CATALOGUE));
    case "/bare":
      return page(barePage(addresses));
    case "/endless":
      return page(endlessPage(addresses, numberIn(url, "count", 240)));
    case "/endless/more":
      return page(moreTiles(addresses, numberIn(url, "from", 0), numberIn(url, "count", 240)));
    case "/tiles":
      return page(tilesPage(addresses, numberIn(url, "n", 240)));
    case "/journal":
      return page(journalPage());
    case "/help":
      return page(note("Help", "Write to us, or knock on the door at 14 Harbour Street."));
    case "/basket":
      return page(note("Your basket", "Two pieces are waiting. The till is closed today."));
    default:
      return page(note("Not found", "We have looked in every drawer. Try the menu above."), 404);
  }
}
