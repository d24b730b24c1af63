import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readClosetFile } from "../../lib/closet/closet-file.ts";
import type { PageSummary, SummaryProduct } from "../../lib/link/messages.ts";
import { type HiddenNode, type HiddenParts, hiddenParts } from "../browser/hidden-parts.ts";
import { importCloset } from "../browser/import-closet.ts";
import { type ExtensionBrowser, openExtension } from "../browser/open-extension.ts";
import { scanPage } from "../browser/scan-page.ts";
import { HOSTILE_LOOK, HOSTILE_PRESSES, HOSTILE_SEARCH } from "./hostile-script.ts";
import { type HostileStore, openHostileStore, TITLES } from "./hostile-store.ts";
import { type AnyPage, badgesOf, DEMO_CLOSET, explain, summaryOf, until } from "./store-visit.ts";

/** Evaluates in the page's own world without the driver's helpers, which a hostile page would break. */
async function rawPage(page: Page): Promise<AnyPage> {
  const session = await page.context().newCDPSession(page);
  return {
    async evaluate<T>(expression: string) {
      const { result, exceptionDetails } = await session.send("Runtime.evaluate", {
        expression,
        returnByValue: true,
      });
      if (exceptionDetails)
        throw new Error(exceptionDetails.exception?.description?.split("\n")[0] ?? exceptionDetails.text);
      return result.value as T;
    },
  };
}

interface Look {
  readonly pwned: boolean;
  readonly heard: readonly string[];
  readonly roots: number;
  readonly words: string;
  readonly boxes: readonly string[];
  readonly moving: number;
  readonly polluted: number;
}

const ODD_PICTURES = ["drawing", "bomb", "laterBomb", "redirect", "noPicture", "endless"] as const;

/** How long a scan may take; ms. It only bounds a failure. */
const SCAN_MS = 30_000;

const OWNED = readClosetFile(readFileSync(DEMO_CLOSET, "utf8")).pieces.map(({ name }) => name);

/** What the worker asked the picture host for; only its requests belong to no page. */
const byWorker = ({ cdn }: HostileStore) =>
  cdn.seen.filter(({ headers }) => headers["sec-fetch-site"] === "none");

/** Waits until the browser has drawn, and told whoever watches, twice; timers are the page's own. */
const drawnTwice = (page: Page) => page.waitForTimeout(300);

/** A switched-on store whose pages do what they can to learn of the closet or to have something saved. One story. */
describe("a hostile store", () => {
  let store: HostileStore;
  let extension: ExtensionBrowser;
  let closetPage: Page;
  let page: Page;
  let raw: AnyPage;
  let hidden: HiddenParts;
  let summary: PageSummary;
  const requests: { url: string; type: string }[] = [];

  beforeAll(async () => {
    store = await openHostileStore();
    extension = await openExtension();
    closetPage = await extension.openPage("closet.html");
    await importCloset(closetPage, DEMO_CLOSET);
    await extension.approve(["http://shop.localhost", "http://cdn.localhost"]);
    extension.context.on("request", (request) => {
      requests.push({ url: request.url(), type: request.resourceType() });
    });
    await extension.context.addCookies([
      { name: "who", value: "me", url: `http://cdn.localhost:${store.cdn.port}/`, sameSite: "Lax" },
    ]);
    page = await extension.context.newPage();
    raw = await rawPage(page);
    hidden = await hiddenParts(page);
    await page.goto(store.url);
  });
  afterAll(async () => {
    await extension?.close();
    await store?.close();
  });

  const productNamed = (title: string) => summary.products.find(({ candidate }) => candidate.title === title);
  const read = (title: string) => (product: SummaryProduct) =>
    product.candidate.title === title && product.brief;
  const reasonOf = (title: string) => productNamed(title)?.candidate.palette.reason;

  const buttonNamed = (name: string) =>
    until(`the button "${name}"`, async () => (await hidden.buttons()).find(({ text }) => text === name));
  const said = async () => (await hidden.all()).find(({ attributes }) => attributes.class === "status")?.text;
  const wished = async () =>
    (await explain({ closetPage }, summary)).filter((verdict) => verdict.wished).map(({ key }) => key);
  /** Presses where a button is, with no help from a driver that would wait until it is uncovered. */
  const press = async (button: HiddenNode, clickCount = 1) => {
    const box = await hidden.box(button);
    if (!box) throw new Error(`"${button.text}" is not drawn.`);
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2, { clickCount });
  };

  it("is switched on and read like any other, whatever it has broken in its own world", async () => {
    const popup = await extension.clickAction(page);
    await popup.click("button", "Switch on");
    await popup.waitFor("document.querySelector('.row')");
    await popup.close();
    await page.bringToFront();
    await until("badges", async () => (await badgesOf(hidden)).length >= TITLES.good.length);
    for (let y = 0; y <= 2_000; y += 400) {
      await raw.evaluate(`scrollTo(0, ${y})`);
      await new Promise((done) => setTimeout(done, 150));
    }
    await raw.evaluate("scrollTo(0, 0)");
    summary = await until("all read", async () => {
      const told = await summaryOf({ closetPage }, raw);
      return (
        told.products.length >= Object.keys(TITLES).length &&
        told.products.every(({ brief }) => brief) &&
        told
      );
    });
    for (const title of [...TITLES.good, TITLES.markup, TITLES.prototype, TITLES.script, TITLES.data])
      expect(productNamed(title)?.candidate.palette.swatches.length, title).toBeGreaterThan(0);
    const labels = (await badgesOf(hidden)).map(({ attributes }) => attributes["aria-label"]);
    expect(labels).toContainEqual(expect.stringContaining(TITLES.markup));
    for (const title of [TITLES.script, TITLES.data]) expect(productNamed(title)?.link).toBeNull();
    for (const { candidate } of summary.products) expect(candidate.title.length).toBeLessThanOrEqual(300);
  });

  it("has no picture read that is none, unfolds to gigabytes, never ends or leads elsewhere", () => {
    expect(Object.fromEntries(ODD_PICTURES.map((name) => [name, reasonOf(TITLES[name])]))).toEqual({
      drawing: "This kind of picture cannot be read.",
      bomb: "The picture is too large to read.",
      laterBomb: "The picture is too large to read.",
      redirect: "The store does not let this picture be read.",
      noPicture: "This kind of picture cannot be read.",
      endless: "The picture is too large to read.",
    });
    // The page itself followed its picture there; nobody else did.
    expect(store.home.seen.map(({ headers }) => headers["sec-fetch-dest"])).toEqual(["image"]);
  });

  it("hears and sees nothing of what is hung on it", async () => {
    const badges = await raw.evaluate<number>("added.length");
    expect(badges).toBeGreaterThanOrEqual(summary.products.length);
    const { heard, roots, words, boxes, moving, pwned, polluted } = await raw.evaluate<Look>(HOSTILE_LOOK);
    expect(heard).toEqual([]);
    expect({ roots, moving, pwned, polluted }).toEqual({ roots: 0, moving: 0, pwned: false, polluted: 0 });
    expect(boxes).toEqual(["0 x 0, 0 x 0"]);
    expect(words).not.toMatch(/you|own|skirt|set|closet/i);
  });

  it("cannot press it", async () => {
    await raw.evaluate(HOSTILE_PRESSES);
    expect((await hidden.all()).filter(({ attributes }) => attributes.role === "dialog")).toEqual([]);
    expect(await wished()).toEqual([]);
  });

  it("cannot have a person save what they do not see", async () => {
    const [badge] = await badgesOf(hidden);
    if (!badge) throw new Error("no badge");
    await hidden.click(badge);
    const save = await buttonNamed("Save to wishlist");
    await raw.evaluate(`var cover = document.createElement("div"); cover.popover = "manual";
      cover.style.cssText = "position:fixed;inset:0;margin:0;border:0;width:100vw;height:100vh;background:gold;pointer-events:none";
      document.lastChild.appendChild(cover); cover.showPopover()`);
    await drawnTwice(page);
    await press(save);
    expect(await said()).toContain("covered or moved the card");
    expect(await wished()).toEqual([]);
    await raw.evaluate("cover.hidePopover()");
    await until("the card to be in sight for a while", async () => {
      const waiting = (await hidden.buttons()).find(({ text }) => text === "Save to wishlist");
      if (waiting) await press(waiting);
      return !waiting;
    });
    expect(await wished()).toHaveLength(1);
  });

  it("finds no word of badges or card by searching or selecting", async () => {
    const hung = (await hidden.all()).map(({ text }) => text.toLowerCase()).join();
    const secrets = OWNED.filter((name) => hung.includes(name.toLowerCase()));
    expect(secrets.length).toBeGreaterThan(1);
    // A word of the page's own shows that searching works.
    const own = TITLES.good[1];
    const words = [own, ...secrets, "set with", "you own", "Goes with", "Take off wishlist", "Saved to"];
    expect(await raw.evaluate(HOSTILE_SEARCH(words))).toEqual([own]);
  });

  it("counts the two presses of a double click as one", async () => {
    await press(await buttonNamed("Take off wishlist"), 2);
    await until("the words", async () => (await said()) === "Taken off your wishlist.");
    await buttonNamed("Save to wishlist");
    expect(await wished()).toEqual([]);
  });

  it("cannot show a card again that was closed", async () => {
    await page.keyboard.press("Escape");
    const gone = async () => !(await hidden.buttons()).some(({ text }) => text === "Close");
    await until("the card to close", gone);
    await raw.evaluate(
      "for (const host of added) if (host.popover) { document.lastChild.appendChild(host); host.showPopover(); }",
    );
    await drawnTwice(page);
    expect(await gone()).toBe(true);
  });

  it("is not asked again for a picture that was read, though the worker died and the page came anew", async () => {
    const fetched = () =>
      requests.flatMap(({ type, url }) => (type === "fetch" && url.includes("/red.png") ? url : []));
    const before = fetched();
    expect(new Set(before).size).toBe(TITLES.good.length - 1);
    await extension.killWorker();
    await page.reload();
    summary = await until("all read again", async () => {
      const told = await summaryOf({ closetPage }, raw);
      return TITLES.good.every((title) => told.products.some(read(title))) && told;
    });
    expect(fetched()).toEqual(before);
  });

  it("was asked for nothing but its page and its products' pictures, by the worker without cookie or page", async () => {
    const shown = new Set(requests.filter(({ type }) => type === "image").map(({ url }) => url));
    const others = requests.filter(({ type, url }) => type !== "image" && url !== store.url);
    expect(others.length).toBeGreaterThan(0);
    for (const { url, type } of others) expect([type, shown.has(url)], url).toEqual(["fetch", true]);
    const worker = byWorker(store);
    expect(worker.length).toBeGreaterThan(0);
    for (const { headers } of worker) {
      expect(headers).not.toHaveProperty("cookie");
      expect(headers).not.toHaveProperty("referer");
    }
    expect(await extension.context.cookies(`http://cdn.localhost:${store.cdn.port}/`)).toHaveLength(1);
  });

  it("is explained by a scan like any other", async () => {
    const scanned = await scanPage(extension, closetPage, store.url, SCAN_MS, true);
    const titles = scanned.summary.products.map(({ candidate }) => candidate.title);
    expect(titles).toEqual(summary.products.map(({ candidate }) => candidate.title));
    expect(scanned.explanation?.found.map(({ title }) => title)).toEqual(titles);
    expect(scanned.explanation?.found.every(({ evidence }) => evidence.length > 0)).toBe(true);
    expect(scanned.explanation?.rejected).toContainEqual(
      expect.objectContaining({ text: "Free shipping over €75", why: expect.stringContaining("no price") }),
    );
  });
});
