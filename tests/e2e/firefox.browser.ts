import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readClosetFile } from "../../lib/closet/closet-file.ts";
import type { Piece } from "../../lib/closet/piece.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import type { ExplainedVerdict, PageSummary } from "../../lib/link/messages.ts";
import { originOf } from "../../lib/link/origin-of.ts";
import type { FirefoxPage } from "../browser/firefox-page.ts";
import { type FirefoxBrowser, openFirefox } from "../browser/open-firefox.ts";
import { deltaE } from "../fit/slow-comparison.ts";
import { openServer } from "../pixels/picture-server.ts";
import { CATALOGUE } from "../store/catalogue.ts";
import { type Store, startStore } from "../store/start-store.ts";
import { CLOTH_PICTURE, listing, tile } from "./living-store.ts";
import { relationsAgreed } from "./relations-agreed.ts";
import { badgesOf, DEMO_CLOSET, explain, scrollThrough, summaryOf, until } from "./store-visit.ts";

const text = (page: FirefoxPage) => page.evaluate<string>("document.body?.innerText ?? ''");

/** The whole job in a real Firefox ESR with the extension built for it. One story, told in order. */
describe("shopping with Firefox", () => {
  const owned: readonly Piece[] = readClosetFile(readFileSync(DEMO_CLOSET, "utf8")).pieces;
  let store: Store;
  let firefox: FirefoxBrowser;
  let closetPage: FirefoxPage;
  let page: FirefoxPage;
  let summary: PageSummary;
  let verdicts: readonly ExplainedVerdict[];

  beforeAll(async () => {
    store = await startStore();
    firefox = await openFirefox();
    closetPage = await firefox.openPage("closet.html");
    page = await firefox.newPage();
  });
  afterAll(async () => {
    await firefox?.close();
    await store?.close();
  });

  const productAt = (at: number) => {
    const product = CATALOGUE[at];
    if (!product) throw new Error(`the store has no product ${at}`);
    return product;
  };
  const grants = () => closetPage.evaluate<{ origins: string[] }>("browser.permissions.getAll()");
  const scripts = () =>
    closetPage.evaluate<{ id: string; matches: string[] }[]>(
      "browser.scripting.getRegisteredContentScripts().then((all) => all.map(({ id, matches }) => ({ id, matches })))",
    );
  const badgeOn = async (title: string) =>
    (await badgesOf(page)).find(({ attributes }) => attributes["aria-label"]?.includes(title));
  const buttonNamed = (name: string) =>
    until(`the button "${name}"`, async () => (await page.buttons()).find((button) => button.text === name));
  const textShown = (words: string) =>
    until(`the words "${words}"`, async () =>
      (await page.all()).some((node) => node.text === words || node.text.startsWith(`${words} `)),
    );
  const openCardOf = async (title: string) => {
    await page.click(await until(`a badge on ${title}`, () => badgeOn(title)));
    await buttonNamed("Close");
  };
  const closeCard = async () => {
    await page.press("Escape");
    await until("the card to close", async () => !(await page.buttons()).some((b) => b.text === "Close"));
  };
  const wishlistShows = (words: string) =>
    until(`"${words}" on the wishlist`, async () => (await text(closetPage)).includes(words));

  it("takes the closet in from a file", async () => {
    await until("the closet page", async () => (await text(closetPage)).includes("Your closet file"));
    await closetPage.setFile(
      `document.querySelector('.file-panel input[type="file"]')`,
      resolve(DEMO_CLOSET),
    );
    for (const { name } of owned) {
      await until(`${name} in the closet`, async () => (await text(closetPage)).includes(name));
    }
  });

  it("leaves a store alone until it is switched on", async () => {
    await page.goto(store.shopUrl);
    expect(await page.all()).toEqual([]);
    expect(await scripts()).toEqual([]);
    expect((await grants()).origins).toEqual([]);
  });

  it("reads just this page when asked, without any grant, and no longer than the page lasts", async () => {
    await page.bringToFront();
    const popup = await firefox.clickAction();
    await popup.click("button", "Just this page");
    await popup.waitFor("document.querySelector('.row')");
    // The store's host keeps the file of this one to itself; it lies in plain sight.
    await popup.waitFor(
      "[...document.querySelectorAll('.row-open')].some((row) => row.textContent === 'Pleated midi skirt in scarlet')",
    );
    await popup.close();
    await until("badges on the first row", async () => (await badgesOf(page)).length >= 4);
    expect((await grants()).origins).toEqual([]);
    await page.reload();
    expect(await page.all()).toEqual([]);
  });

  it("is switched on from the popup, for this store and its pictures alone", async () => {
    await page.bringToFront();
    const popup = await firefox.clickAction();
    await popup.click("button", "Switch on");
    await popup.waitFor("document.querySelector('.row')");
    await popup.close();
    const [shop, cdn] = [store.shopUrl, store.cdnUrl].map((url) => originOf(url));
    expect(await scripts()).toEqual([{ id: shop, matches: [`${shop}/*`] }]);
    expect((await grants()).origins.toSorted()).toEqual([`${cdn}/*`, `${shop}/*`]);
    await until("badges on the first row", async () => (await badgesOf(page)).length >= 4);
  });

  it("finds all 48 products and reads every picture, CORS or not, near a dye it was drawn with", async () => {
    await scrollThrough(page);
    summary = await until("all pictures read", async () => {
      const told = await summaryOf({ closetPage }, page);
      return told.products.every(({ brief }) => brief) && told;
    });
    expect(summary.kind).toBe("listing");
    const errors = CATALOGUE.map(({ title, price, currency, slot, variants: [{ dyes }] }, at) => {
      const found = summary.products[at];
      expect(found?.candidate.title).toBe(title);
      expect(found?.price, title).toEqual({ amount: price, currency });
      expect(found?.candidate.slot, title).toBe(slot);
      const first = found?.candidate.palette.swatches[0];
      if (!first) throw new Error(`${title} was not read: ${found?.candidate.palette.reason}`);
      return Math.min(...dyes.map((hex) => deltaE(first, { oklab: parseColor(hex), share: 1 })));
    });
    expect(summary.products).toHaveLength(CATALOGUE.length);
    // The bounds that the flow in Chromium keeps, with their reasons there.
    expect(errors.toSorted((one, other) => one - other)[errors.length >> 1]).toBeLessThan(5);
    expect(errors.filter((error) => error <= 10).length / errors.length).toBeGreaterThan(0.85);
  });

  it("reads the file of a picture that its host shows on pages of the store alone", async () => {
    const server = await openServer((path, response) => {
      const own = response.req.headers.referer?.startsWith("http://shop.localhost");
      if (path.startsWith("/i/")) response.writeHead(own ? 200 : 403).end(own ? CLOTH_PICTURE : "");
      else
        response
          .setHeader("content-type", "text/html")
          .end(listing(tile("own", `http://cdn.localhost:${server.port}/i/1.png`)));
    });
    const shown = await firefox.newPage();
    await shown.goto(`http://shop.localhost:${server.port}/`);
    const told = await until("its badge", async () => {
      const summary = await summaryOf({ closetPage }, shown);
      return summary.products.some(({ brief }) => brief) && summary;
    });
    const [product] = told.products;
    expect(product?.candidate.palette.evidence).toEqual(expect.not.arrayContaining(["screen"]));
    expect(product?.candidate.palette.swatches).toHaveLength(1);
    await server.close();
  });

  it("says on every badge what a slow comparison with culori says", async () => {
    verdicts = await explain({ closetPage }, summary);
    expect(verdicts).toHaveLength(CATALOGUE.length);
    const kinds = relationsAgreed(owned, summary, verdicts);
    expect([...kinds]).toEqual(
      expect.arrayContaining(["matching", "analogous", "triadic", "complementary", "with-neutral"]),
    );
    const labels = (await badgesOf(page)).map(({ attributes }) => attributes["aria-label"] ?? "");
    expect(labels).toHaveLength(CATALOGUE.length);
    for (const [at, { title }] of CATALOGUE.entries())
      expect(labels.find((label) => label.includes(title))).toContain(verdicts[at]?.verdict.headline);
  });

  it("shows the page nothing of the closet", async () => {
    const seen = await page.evaluate<{ text: string; open: number; named: string[] }>(`({
      text: document.documentElement.outerHTML,
      open: [...document.querySelectorAll("*")].filter((element) => element.shadowRoot).length,
      named: Object.getOwnPropertyNames(window).filter((name) => /hueward/i.test(name)),
    })`);
    for (const { name } of owned) expect(seen.text).not.toContain(name);
    expect(seen).toMatchObject({ open: 0, named: [] });
  });

  it("gives the page no way in by what it hears of a pointer or a focus", async () => {
    await page.evaluate(`(() => {
      globalThis.overheard = new Set();
      const read = (tree) => tree.innerHTML + tree.textContent;
      const hear = (event) => {
        for (const from of [event.originalTarget, event.explicitOriginalTarget]) {
          const tree = from?.getRootNode?.();
          if (tree && tree !== document) overheard.add(read(tree));
        }
      };
      for (const type of ["pointermove", "pointerover", "mousemove", "mouseover", "focusin", "keydown", "click"])
        addEventListener(type, hear, true);
    })()`);
    await openCardOf(productAt(0).title);
    const names = await until("owned pieces on the card", async () => {
      const texts = (await page.all()).map((node) => node.text);
      const shown = owned.map(({ name }) => name).filter((name) => texts.includes(name));
      return shown.length > 0 && shown;
    });
    await page.click(await buttonNamed("Not this colour"));
    await page.click(await buttonNamed("Back"));
    await closeCard();
    const overheard = await page.evaluate<string[]>("[...overheard]");
    // The trees are found, so that what is missing is missing in them.
    expect(overheard.join()).toContain("Not this colour");
    const headline = verdicts[0]?.verdict.headline ?? "";
    for (const words of [...names, headline, "Save to wishlist"])
      expect(overheard.join()).not.toContain(words);
  });

  it("opens a card that names an owned piece, and closes it with Escape", async () => {
    await openCardOf(productAt(0).title);
    const [first] = verdicts[0]?.verdict.pieces ?? [];
    const name = verdicts[0]?.pieces[first?.pieceId ?? ""]?.name ?? "";
    expect(name).not.toBe("");
    await textShown(name);
    await closeCard();
  });

  it("saves to the wishlist, with picture, price and what it would do today", async () => {
    const product = productAt(6);
    await openCardOf(product.title);
    await page.click(await buttonNamed("Save to wishlist"));
    await textShown("Saved to your wishlist.");
    await closeCard();
    await closetPage.bringToFront();
    await closetPage.click(
      "[...document.querySelectorAll('a')].find((link) => /^Wishlist/.test(link.textContent))",
    );
    await wishlistShows(product.title);
    await wishlistShows(verdicts[6]?.verdict.headline ?? "");
    await wishlistShows("shop.localhost");
    const format = new Intl.NumberFormat("en-GB", { style: "currency", currency: product.currency });
    await wishlistShows(format.format(product.price));
    const pictures = await closetPage.evaluate<string[]>(
      "[...document.querySelectorAll('.wish-card img')].map((img) => img.src)",
    );
    expect(pictures).toEqual([expect.stringMatching(/^data:image\/jpeg;base64,/)]);
    await page.bringToFront();
  });

  it("keeps a piece that the person owns, and its badge knows of it at once", async () => {
    const { title } = productAt(0);
    await openCardOf(title);
    await page.click(await buttonNamed("I own this"));
    await textShown("Added to your closet.");
    await closeCard();
    await until("the badge to know", async () =>
      (await badgeOn(title))?.attributes["aria-label"]?.includes("You own this piece"),
    );
  });

  it("takes a person's word for the colour, and remembers it over a reload", async () => {
    const { title } = productAt(1);
    const paletteOf = async () =>
      (await summaryOf({ closetPage }, page)).products.find(({ candidate }) => candidate.title === title)
        ?.candidate.palette;
    await openCardOf(title);
    await page.click(await buttonNamed("Not this colour"));
    const choice = await until("colours to choose from", async () =>
      (await page.buttons()).find((button) => button.attributes.class === "choice" && button.text !== ""),
    );
    await page.click(choice);
    const said = await until("the word to count", async () => {
      const palette = await paletteOf();
      return palette?.evidence.includes("person") && palette;
    });
    await page.reload();
    await until("badges again, by themselves", async () => (await badgesOf(page)).length >= 4);
    const again = await until("the product again", async () => {
      const palette = await paletteOf();
      return palette?.swatches.length ? palette : null;
    });
    expect(again).toEqual(said);
  });

  it("goes on when the background page ends", async () => {
    expect(await firefox.endBackground()).toBe(true);
    await openCardOf(productAt(2).title);
    await buttonNamed("Save to wishlist");
    await closeCard();
  });

  it("asked the store for nothing but its own pictures, and never with a cookie", () => {
    const hosts = new Set(store.requests.map(({ host }) => host.replace(/:\d+$/, "")));
    expect([...hosts].sort()).toEqual(["cdn.localhost", "shop.localhost"]);
    for (const { host, path, headers } of store.requests) {
      if (!host.startsWith("cdn.")) continue;
      expect(path).toMatch(/\.jpg(\?|$)/);
      expect(headers).not.toHaveProperty("cookie");
    }
  });

  it("is switched off in one click, and every trace leaves the page", async () => {
    await page.bringToFront();
    const popup = await firefox.clickAction();
    await popup.click("button", "Switch off");
    await until("the page to be clean", async () => (await page.all()).length === 0);
    await until("the store to be off", async () => (await scripts()).length === 0);
    await popup.close();
    expect((await grants()).origins).toEqual([]);
  });
});
