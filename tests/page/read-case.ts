import { Window } from "happy-dom";
import type { FoundPage } from "../../lib/page/product.ts";
import { htmlOf, type PageCase } from "./cases/page-case.ts";
import { finish } from "./finish.ts";
import { readPage } from "./read-page.ts";

/** A document without layout, as a page of the invented store. */
export function documentOf(page: PageCase): Document {
  const window = new Window({ url: page.url ?? "http://shop.localhost/list" });
  window.document.write(htmlOf(page));
  return window.document as unknown as Document;
}

export const readCase = (page: PageCase): FoundPage => finish(readPage(documentOf(page)));
