import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readClosetFile } from "../../lib/closet/closet-file.ts";
import type { Piece } from "../../lib/closet/piece.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import type { ExplainedVerdict, PageSummary } from "../../lib/link/messages.ts";
import { type HiddenNode, type HiddenParts, hiddenParts } from "../browser/hidden-parts.ts";
import { deltaE } from "../fit/slow-comparison.ts";
import { CATALOGUE } from "../store/catalogue.ts";
import { relationsAgreed } from "./relations-agreed.ts";
import {
  badgesOf,
  DEMO_CLOSET,
  explain,
  openScene,
  type Scene,
  scrollThrough,
  summaryOf,
  switchOn,
  until,
} from "./store-visit.ts";

/**
 * The whole job in a real Chromium with the built extension, from switching a store on to switching it off. One story,
 * told in order: each step goes on from the last.
 */
describe("shopping in the invented store", () => {
  const owned: readonly Piece[] = readClosetFile(readFileSync(DEMO_CLOSET, "utf8")).pieces;
  let scene: Scene;
  let page: Page;
  let hidden: HiddenParts;
  let summary: PageSummary;
  let verdicts: readonly ExplainedVerdict[];

  beforeAll(async () => {
    scene = await openScene();
    page = await scene.extension.context.newPage();
    await page.goto(scene.store.shopUrl);
    hidden = await hiddenParts(page);
  });
  afterAll(() => scene?.close());

  const paletteAt = (at: number) => {
    const palette = summary.products[at]?.candidate.palette;
    if (!palette) throw new Error(`no product ${at}`);
    return palette;
  };
  const buttonNamed = (name: string) =>
    until(`the button "${name}"`, async () => (await hidden.buttons()).find(({ text }) => text === name));
  const textShown = (text: string) =>
    until(`the words "${text}"`, async () =>
      (await hidden.all()).some((node) => node.text === text || node.text.startsWith(`${text} `)),
    );
  const openCardOf = async (title: string) => {
    const badge = await until(`a badge on ${title}`, async () =>
      (await badgesOf(hidden)).find(({ attributes }) => attributes["aria-label"]?.includes(title)),
    );
    await hidden.click(badge);
    await buttonNamed("Close");
  };
  /** Presses on the card, and again where it asks for that, as a person would. */
  const press = (node: HiddenNode) =>
    until(`a press on "${node.text}" to count`, async () => {
      await hidden.click(node);
      return !(await hidden.all()).some(
        ({ text, attributes }) => attributes.role === "status" && text.includes("press again"),
      );
    });
  const registered = async () =>
    (await scene.extension.worker()).evaluate(
      "chrome.scripting.getRegisteredContentScripts().then((all) => all.map(({ id, matches }) => ({ id, matches })))",
    );

  it("leaves a store alone until it is switched on", async () => {
    expect(await hidden.all()).toEqual([]);
    expect(await registered()).toEqual([]);
  });

  it("is switched on from the popup, for this store alone", async () => {
    await switchOn(scene, page);
    const [shop] = scene.origins;
    expect(await registered()).toEqual([{ id: shop, matches: [`${shop}/*`] }]);
    await until("badges on the first row", async () => (await badgesOf(hidden)).length >= 4);
  });

  it("finds all 48 products with their titles, prices and slots, and reads every picture, CORS or not", async () => {
    await scrollThrough(page);
    summary = await until("all pictures read", async () => {
      const told = await summaryOf(scene, page);
      return told.products.every(({ brief }) => brief) && told;
    });
    expect(summary.kind).toBe("listing");
    expect(summary.products.map(({ candidate }) => candidate.title)).toEqual(
      CATALOGUE.map(({ title }) => title),
    );
    for (const [at, product] of CATALOGUE.entries()) {
      const found = summary.products[at];
      expect(found?.price, product.title).toEqual({ amount: product.price, currency: product.currency });
      expect(found?.candidate.slot, product.title).toBe(product.slot);
      expect(found?.candidate.palette.swatches.length, product.title).toBeGreaterThan(0);
    }
  });

  it("names the colour of the cloth, near a dye it was drawn with, and is sure only where it is right", () => {
    const found = CATALOGUE.map(({ title, variants: [variant] }, at) => {
      const { swatches, confidence } = paletteAt(at);
      const [first] = swatches;
      if (!first) throw new Error(`${title} was not read`);
      const errors = variant.dyes.map((hex) => deltaE(first, { oklab: parseColor(hex), share: 1 }));
      return { error: Math.min(...errors), confidence };
    });
    const within = (some: typeof found) => some.filter(({ error }) => error <= 10).length / some.length;
    const errors = found.map(({ error }) => error).sort((one, other) => one - other);
    // Two fabrics within a CIEDE2000 of about 5 share a dictionary name (median distance of ISCC-NBS neighbours: 5.4).
    expect(errors[errors.length >> 1]).toBeLessThan(5);
    // Some pictures are hard on purpose: a beret on brown hair, tights between a skirt and shoes, a necklace.
    expect(within(found)).toBeGreaterThan(0.85);
    expect(within(found.filter(({ confidence }) => confidence >= 0.8))).toBeGreaterThan(0.95);
  });

  it("says of every product what a slow comparison with culori says", async () => {
    verdicts = await explain(scene, summary);
    expect(verdicts).toHaveLength(CATALOGUE.length);
    const kinds = relationsAgreed(owned, summary, verdicts);
    expect([...kinds]).toEqual(
      expect.arrayContaining(["matching", "analogous", "triadic", "complementary", "with-neutral"]),
    );
  });

  it("shows on each badge the words of its verdict, one badge a product", async () => {
    const badges = await badgesOf(hidden);
    expect(badges).toHaveLength(CATALOGUE.length);
    for (const [at, { title }] of CATALOGUE.entries()) {
      const label = badges.find(({ attributes }) => attributes["aria-label"]?.includes(title))?.attributes[
        "aria-label"
      ];
      expect(label, title).toContain(verdicts[at]?.verdict.headline);
    }
    const headlines = verdicts.map(({ verdict }) => verdict.headline);
    expect(headlines.some((words) => words.startsWith("You own this"))).toBe(true);
    expect(headlines.some((words) => /set with your/.test(words))).toBe(true);
    expect(headlines.some((words) => /^Finishes \d+ look/.test(words))).toBe(true);
  });

  it("shows the page nothing of the closet", async () => {
    const seen = await page.evaluate(() => {
      const everything = [...document.querySelectorAll("*")];
      return {
        text: `${document.documentElement.outerHTML}`,
        open: everything.filter((element) => element.shadowRoot).length,
        named: Object.getOwnPropertyNames(window).filter((name) => /hueward/i.test(name)),
      };
    });
    for (const { name } of owned) expect(seen.text).not.toContain(name);
    expect(seen).toMatchObject({ open: 0, named: [] });
  });

  it("opens a card that names the owned pieces and their colours, and closes it with Escape", async () => {
    const [product] = CATALOGUE;
    await openCardOf(product?.title ?? "");
    const [first] = verdicts[0]?.verdict.pieces ?? [];
    const name = verdicts[0]?.pieces[first?.pieceId ?? ""]?.name ?? "";
    expect(name).not.toBe("");
    await textShown(name);
    await page.keyboard.press("Escape");
    await until(
      "the card to close",
      async () => !(await hidden.buttons()).some(({ text }) => text === "Close"),
    );
    expect(page.url()).toBe(`${scene.store.shopUrl}/`);
  });

  it("saves to the wishlist, with picture, price and what it would do today", async () => {
    const product = CATALOGUE[6];
    if (!product) throw new Error("the store has too few products");
    await openCardOf(product.title);
    await press(await buttonNamed("Save to wishlist"));
    await textShown("Saved to your wishlist.");
    await page.keyboard.press("Escape");
    const { closetPage } = scene;
    await closetPage.bringToFront();
    await closetPage.getByRole("link", { name: /Wishlist/ }).click();
    const wish = closetPage.getByRole("listitem").filter({ hasText: product.title }).first();
    await wish.waitFor();
    const headline = verdicts[6]?.verdict.headline ?? "";
    await wish.getByText(headline).first().waitFor();
    expect(await wish.locator("img").first().getAttribute("src")).toMatch(/^data:image\/jpeg;base64,/);
    const pounds = new Intl.NumberFormat("en-GB", { style: "currency", currency: "GBP" }).format(
      product.price,
    );
    expect(await wish.textContent()).toContain(pounds);
    expect(await wish.textContent()).toContain("shop.localhost");
    await page.bringToFront();
  });

  it("keeps a piece that the person owns, and every badge knows of it at once", async () => {
    const product = CATALOGUE[0];
    if (!product) throw new Error("the store has no products");
    await openCardOf(product.title);
    await press(await buttonNamed("I own this"));
    await textShown("Added to your closet.");
    await page.keyboard.press("Escape");
    await until("the badge to know", async () =>
      (await badgesOf(hidden)).find(({ attributes }) => {
        const label = attributes["aria-label"] ?? "";
        return label.includes(product.title) && label.includes("You own this piece");
      }),
    );
  });

  it("takes a person's word for the colour, and remembers it over a reload", async () => {
    const product = CATALOGUE[1];
    if (!product) throw new Error("the store has too few products");
    await openCardOf(product.title);
    await press(await buttonNamed("Not this colour"));
    const choice = await until("colours to choose from", async () =>
      (await hidden.buttons()).find(({ attributes, text }) => attributes.class === "choice" && text !== ""),
    );
    await press(choice);
    const saidOf = async () =>
      (await summaryOf(scene, page)).products.find(({ candidate }) => candidate.title === product.title)
        ?.candidate;
    await until("the word to count", async () => (await saidOf())?.palette.evidence.includes("person"));
    const said = await saidOf();
    await page.reload();
    hidden = await hiddenParts(page);
    await until("badges again, by themselves", async () => (await badgesOf(hidden)).length >= 4);
    const again = await until("the product again", async () => {
      const candidate = await saidOf();
      return candidate?.palette.swatches.length ? candidate : null;
    });
    expect(again.palette).toEqual(said?.palette);
  });

  it("goes on when the worker dies", async () => {
    await scene.extension.killWorker();
    const product = CATALOGUE[2];
    if (!product) throw new Error("the store has too few products");
    await openCardOf(product.title);
    await buttonNamed("Save to wishlist");
    await page.keyboard.press("Escape");
  });

  it("asked the store for nothing but its own pictures", () => {
    const hosts = new Set(scene.store.requests.map(({ host }) => host.replace(/:\d+$/, "")));
    expect([...hosts].sort()).toEqual(["cdn.localhost", "shop.localhost"]);
    const withoutPage = scene.store.requests.filter(({ headers }) => headers["sec-fetch-site"] === "none");
    for (const { path, headers } of withoutPage.filter(({ host }) => host.startsWith("cdn."))) {
      expect(path).toMatch(/\.jpg(\?|$)/);
      expect(headers).not.toHaveProperty("cookie");
      expect(headers).not.toHaveProperty("referer");
    }
  });

  it("is switched off in one click, and every trace leaves the page", async () => {
    const popup = await scene.extension.clickAction(page);
    await popup.click("button", "Switch off");
    await until("the page to be clean", async () => (await hidden.all()).length === 0);
    await until("the store to be off", async () => ((await registered()) as unknown[]).length === 0);
    await popup.close();
    const granted = await (await scene.extension.worker()).evaluate("chrome.permissions.getAll()");
    expect(granted).toMatchObject({ origins: [] });
  });
});
