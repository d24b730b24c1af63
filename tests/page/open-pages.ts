import type { Page } from "playwright-core";
import { bundle } from "../browser/bundle.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { htmlOf, type PageCase } from "./cases/page-case.ts";
import type { Told } from "./compare.ts";

/** What a reading in the browser brings back: no elements, only what was said of them. */
export interface ReadResult {
  readonly kind: string;
  readonly products: readonly (Told & { readonly shows: string })[];
}

const PICTURE = `<svg xmlns="http://www.w3.org/2000/svg" width="600" height="800"><rect width="600" height="800" fill="#777"/></svg>`;

/**
 * A browser in which every address of shop.localhost answers: pages with the case at hand, pictures with a grey one,
 * those in a folder `gone` with nothing.
 */
export interface Pages {
  open(page: PageCase): Promise<Page>;
  read(page: Page): Promise<ReadResult>;
  close(): Promise<void>;
}

const READER = new URL("./read-page.ts", import.meta.url).pathname;

const READ = `(() => {
  const work = Reader.readPage(document);
  let step = work.next();
  while (!step.done) step = work.next();
  const { kind, products } = step.value;
  const shows = (image) => image?.currentSrc || image?.outerHTML.slice(0, 300) || "";
  return { kind, products: products.map(({ image, root, ...rest }) => ({ ...rest, shows: shows(image) })) };
})()`;

export async function openPages(): Promise<Pages> {
  const reader = await bundle(READER, "Reader");
  const browser = await openBrowser();
  return {
    async open(given) {
      const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
      await page.route("**/*", (route) => {
        const request = route.request();
        if (request.resourceType() === "document")
          return route.fulfill({ contentType: "text/html", body: htmlOf(given) });
        if (request.url().includes("/gone/")) return route.fulfill({ status: 404, body: "" });
        return route.fulfill({ contentType: "image/svg+xml", body: PICTURE });
      });
      await page.goto(given.url ?? "http://shop.localhost/list");
      await page.evaluate(`${reader};globalThis.Reader = Reader;`);
      return page;
    },
    read: (page) => page.evaluate(READ),
    close: () => browser.close(),
  };
}
