import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hiddenParts } from "../browser/hidden-parts.ts";
import {
  badgesCome,
  type LivingStore,
  listing,
  openLivingStore,
  tile,
  tiles,
  titlesOf,
} from "./living-store.ts";
import { badgesOf, summaryOf, until } from "./store-visit.ts";

let store: LivingStore;

beforeAll(async () => {
  store = await openLivingStore();
});
afterAll(() => store?.close());

describe("a page that changes under its badges", () => {
  it("wears right badges while few tiles are used again for many products, and never an old one", async () => {
    const { page, hidden } = await store.show(
      "/virtual",
      listing(
        tiles(8),
        `<script>
        // Eight tiles for all products, filled anew as the person scrolls on.
        const items = [...document.querySelectorAll("li")];
        globalThis.fill = (from) => items.forEach((item, at) => {
          const name = String(from + at);
          item.querySelectorAll("a").forEach((link) => { link.href = "/p/" + name; });
          item.querySelector("h3 a").textContent = "Shirt " + name;
          item.querySelector("img").src = "/pictures/" + name + ((from + at) % 2 ? "/red" : "/blue");
        });
        </script>`,
      ),
      8,
    );
    for (const from of [100, 200, 300]) {
      await page.evaluate(`fill(${from})`);
      await until(`badges from ${from}`, async () => {
        const badges = await badgesOf(hidden);
        return badges.every(({ attributes }, at) => attributes["aria-label"]?.endsWith(`Shirt ${from + at}`));
      });
    }
    const badges = await badgesCome(hidden, 8);
    const colours = badges.map(({ attributes }) =>
      /blue/.test(attributes["aria-label"] ?? "") ? "blue" : "red",
    );
    expect(colours).toEqual(["blue", "red", "blue", "red", "blue", "red", "blue", "red"]);
    await page.close();
  });

  it("keeps one badge a product when it draws every tile anew", async () => {
    const { page, hidden } = await store.show("/redrawn", listing(tiles(6)), 6);
    for (let round = 0; round < 6; round++) {
      await page.evaluate(`document.querySelector("#list").innerHTML += ""`);
      await page.waitForTimeout(200);
    }
    expect(titlesOf(await badgesCome(hidden, 6))).toEqual([0, 1, 2, 3, 4, 5].map((n) => `Shirt ${n}`));
    await page.close();
  });

  it("gets badges on what it adds inside an open shadow tree", async () => {
    const { page, hidden } = await store.show(
      "/shadow",
      listing(
        "",
        `<shop-list></shop-list><script>
        const root = document.querySelector("shop-list").attachShadow({ mode: "open" });
        root.innerHTML = document.querySelector("style").outerHTML + '<ul>' + ${JSON.stringify(tiles(2))} + '</ul>';
        globalThis.more = (html) => root.querySelector("ul").insertAdjacentHTML("beforeend", html);
        </script>`,
      ),
      2,
    );
    await page.evaluate(
      (html) => (globalThis as unknown as { more(html: string): void }).more(html),
      tiles(2, 2),
    );
    expect(titlesOf(await badgesCome(hidden, 4))).toContain("Shirt 3");
    await page.close();
  });

  it("is read anew where a product is given another picture, by a <source> or as a background, however slowly that comes", async () => {
    const choice = tile("choice").replace(
      /<img[^>]*>/,
      (img) => `<picture><source srcset="/pictures/a/red">${img}</picture>`,
    );
    const back = tile("back").replace(
      /<img[^>]*>/,
      '<span style="display:block;height:260px;background-image:url(/pictures/c/red)"></span>',
    );
    const { page, hidden } = await store.show("/source", listing(choice + tile("plain") + back), 3);
    await page.evaluate(() => {
      document.querySelector("source")?.setAttribute("srcset", "/pictures/a/blue?wait=700");
      const [, plain] = document.images;
      if (plain) plain.src = "/pictures/b/blue?wait=700";
      const back = document.querySelector<HTMLElement>(".media > span:not([hidden])");
      if (back) back.style.backgroundImage = "url(/pictures/d/blue)";
    });
    await until("the other colour", async () =>
      (await badgesOf(hidden)).every(({ attributes }) => attributes["aria-label"]?.includes("blue")),
    );
    await page.close();
  });
});

describe("a page whose own names stand in for what a document or a form says", () => {
  it("is read and worn by like any other, whatever names its images and fields bear", async () => {
    const wrapped = [0, 1, 2, 3]
      .map((n) =>
        tile(String(n))
          .replace(/<li[^>]*>/, "$&<form>")
          .replace("</li>", "</form></li>"),
      )
      .join("");
    const names = `<style>form{position:relative}.media{position:static}</style><script>
      const named = (owner, tag) => {
        const names = [];
        for (const name in owner) names.push(name);
        return names.map((name) => {
          const one = document.createElement(tag);
          one.setAttribute("name", name);
          one.hidden = true;
          return one;
        });
      };
      for (const form of [...document.forms]) form.lastElementChild.append(...named(form, "input"));
      document.querySelector("#list").append(...named(document, "img"));
    </script>`;
    const { page, hidden, badges } = await store.show("/named", listing(wrapped, names), 4);
    expect(titlesOf(badges)).toEqual([0, 1, 2, 3].map((n) => `Shirt ${n}`));
    if (badges[0]) await hidden.click(badges[0]);
    await until("the card", async () => (await hidden.buttons()).some(({ text }) => text === "Close"));
    await page.close();
  });
});

describe("markup that meets its code only when a person comes to it", () => {
  it("finds itself as it was sent though it bore badges by then, and bears them itself from then on", async () => {
    const script = `<script>
      globalThis.foreign = [];
      globalThis.met = 0;
      const sent = new Map([...document.querySelectorAll("shop-island")].map((island) => [island, island.innerHTML]));
      const seen = new IntersectionObserver((entries) => {
        for (const { target, isIntersecting } of entries) {
          if (!isIntersecting || !target.hasAttribute("ssr")) continue;
          // What does not match is thrown away, as frameworks do.
          if (target.innerHTML !== sent.get(target)) {
            foreign.push(target.innerHTML.length - sent.get(target).length);
            target.innerHTML = sent.get(target);
          }
          target.removeAttribute("ssr");
          met += 1;
        }
      });
      sent.forEach((_, island) => seen.observe(island));
    </script>`;
    const islands = [0, 4].map(
      (from) => `<shop-island ssr client="visible"><ul>${tiles(4, from)}</ul></shop-island>`,
    );
    const html = listing(
      "",
      `<style>shop-island{display:block;margin-top:950px}</style>${islands.join("")}${script}`,
    );
    const { page, hidden } = await store.open("/islands", { html });
    const inside = () =>
      page.evaluate<number>("document.querySelectorAll('shop-island:not([ssr]) li span[hidden]').length");
    for (const [at, count] of [4, 8].entries()) {
      // Near the screen badges hang already; only a step further is it seen.
      await page.evaluate(
        `scrollTo(0, document.querySelectorAll("shop-island")[${at}].offsetTop - innerHeight - 100)`,
      );
      await badgesCome(hidden, count);
      expect(await page.evaluate("met")).toBe(at);
      await page.evaluate("scrollBy(0, 400)");
      await until("the code to come", async () => (await page.evaluate("met")) === at + 1);
      await until("badges on it", async () => {
        await page.evaluate("scrollBy(0, 1)");
        return (await inside()) === count;
      });
    }
    expect(await page.evaluate("foreign")).toEqual([]);
    expect(titlesOf(await badgesCome(hidden, 8))).toContain("Shirt 7");
    await page.close();
  });
});

describe("the ways a page is shown", () => {
  it("has badges in quirks mode and not on paper", async () => {
    const { page, hidden } = await store.show("/quirks", listing(tiles(8), "", ""), 8);
    expect(await page.evaluate("document.compatMode")).toBe("BackCompat");
    const drawn = async () => Promise.all((await badgesOf(hidden)).map((badge) => hidden.box(badge)));
    const pictures = await page.evaluate(() =>
      [...document.images].map((image) => Math.round(image.getBoundingClientRect().bottom)),
    );
    for (const [at, box] of (await drawn()).entries())
      expect(Math.round((box?.y ?? 0) + (box?.height ?? 0))).toBeCloseTo((pictures[at] ?? 0) - 6, -0.5);
    await page.emulateMedia({ media: "print" });
    await until("no badge on paper", async () => (await drawn()).every((box) => box === null));
    await page.close();
  });

  it("breaks no rule of the strictest policy", async () => {
    const policy =
      "default-src 'none'; script-src 'nonce-x'; style-src 'nonce-x'; img-src 'self'; require-trusted-types-for 'script'; trusted-types 'none'";
    const script = `<script nonce="x">globalThis.broken = [];
      addEventListener("securitypolicyviolation", ({ violatedDirective }) => broken.push(violatedDirective));</script>`;
    const html = listing(tiles(8)).replace("<style>", `${script}<style nonce="x">`);
    const { page, hidden, badges } = await store.show("/strict", html, 8, {
      "content-security-policy": policy,
    });
    if (badges[0]) await hidden.click(badges[0]);
    await until("the card", async () => (await hidden.buttons()).some(({ text }) => text === "Close"));
    expect(await page.evaluate("broken")).toEqual([]);
    await page.close();
  });

  it("keeps badges on their pictures when the person zooms, and takes no other file for another picture", async () => {
    const wide = tile("wide").replace(
      "<img",
      '<img srcset="/pictures/s/red 200w, /pictures/l/red 900w" sizes="(max-width: 700px) 600px, 100px"',
    );
    const { page, hidden } = await store.show("/zoom", listing(wide + tile("two")), 2);
    const before = store.shop.seen.length;
    await page.setViewportSize({ width: 900, height: 900 });
    const onPictures = () =>
      page.evaluate(() =>
        [...document.images].every((image) => {
          const { left, bottom } = image.getBoundingClientRect();
          return document.elementFromPoint(left + 14, bottom - 14)?.matches("span[hidden]");
        }),
      );
    await until("badges on their pictures", onPictures);
    await store.zoom(page, 1.5);
    await until("badges on the enlarged pictures", onPictures);
    await store.zoom(page, 1);
    const asked = () => store.shop.seen.slice(before).map(({ url }) => url);
    await until("the larger file", async () => asked().length > 0);
    await badgesCome(hidden, 2);
    expect(asked()).toEqual(["/pictures/l/red"]);
    await page.close();
  });
});

describe("a long visit", () => {
  it("holds no more after ninety pages and eighteen hundred tiles than while it grew warm", async () => {
    const script = `<script>
      const first = document.querySelector("#list").innerHTML;
      globalThis.go = (at) => {
        history.pushState(null, "", "/long?" + at);
        document.querySelector("#list").innerHTML = first.replaceAll("Shirt ", "Shirt " + at + "-").replaceAll("/p/", "/p/" + at + "-");
      };</script>`;
    const { page, hidden } = await store.show("/long", listing(tiles(20), script), 20);
    const session = await page.context().newCDPSession(page);
    await session.send("Performance.enable");
    const held = async (from: number, to: number) => {
      for (let at = from; at < to; at++) {
        await page.evaluate(`go(${at})`);
        await page.waitForTimeout(150);
      }
      await until("the last page's badges", async () =>
        titlesOf(await badgesCome(hidden, 20)).every((title) => title.startsWith(`Shirt ${to - 1}-`)),
      );
      for (let round = 0; round < 3; round++) await session.send("HeapProfiler.collectGarbage");
      const { nodes, jsEventListeners } = await session.send("Memory.getDOMCounters");
      const { metrics } = await session.send("Performance.getMetrics");
      const heap = metrics.find(({ name }) => name === "JSHeapUsedSize")?.value ?? 0;
      return { nodes, jsEventListeners, heap };
    };
    const first = await held(0, 2);
    // The engine compiles what runs often during the first thousand tiles: that stays, and does not grow.
    const early = await held(2, 50);
    const late = await held(50, 90);
    expect(late.nodes).toBeLessThanOrEqual(first.nodes * 1.2);
    expect(late.jsEventListeners).toBeLessThanOrEqual(first.jsEventListeners * 1.2);
    // Less than the title and the addresses of one product take, for each of those that came and went.
    expect((late.heap - early.heap) / (40 * 20)).toBeLessThan(300);
    await page.close();
  });
});

describe("a page in a browser that no driver keeps awake", () => {
  let context: BrowserContext;
  let closetPage: Page;

  beforeAll(async () => {
    ({ context, closetPage } = await store.restart());
  });

  const add = (page: Page, html: string) =>
    page.evaluate((more) => document.querySelector("#list")?.insertAdjacentHTML("beforeend", more), html);

  it("has one badge a product when the person comes back to it, and goes on from there", async () => {
    store.serve("/gone-by", { html: listing(tiles(4)) });
    store.serve("/elsewhere", { html: listing("") });
    const page = await context.newPage();
    await page.goto(`${store.shopUrl}/gone-by`);
    const hidden = await hiddenParts(page);
    await badgesCome(hidden, 4);
    await page.evaluate("globalThis.same = true");
    await page.goto(`${store.shopUrl}/elsewhere`);
    await page.goBack({ waitUntil: "commit" });
    expect(await page.evaluate("globalThis.same")).toBe(true);
    expect(titlesOf(await badgesCome(hidden, 4))).toEqual([0, 1, 2, 3].map((n) => `Shirt ${n}`));
    await add(page, tiles(2, 4));
    await badgesCome(hidden, 6);
    await page.close();
  });

  it("is left alone while another tab hides it, and is brought up to date when it is shown", async () => {
    store.serve("/behind", { html: listing(tiles(4)) });
    const page = await context.newPage();
    await page.goto(`${store.shopUrl}/behind`);
    const hidden = await hiddenParts(page);
    await badgesCome(hidden, 4);
    await closetPage.bringToFront();
    await until("the tab to be hidden", () => page.evaluate("document.hidden"));
    const before = await summaryOf({ closetPage }, page);
    expect(before.products).toHaveLength(4);
    await page.evaluate(() => document.querySelector("li")?.remove());
    await add(page, tiles(2, 4));
    // Much longer than changes are gathered, also where the browser slows a hidden tab's clock down to a tick a second.
    await page.evaluate(
      "new Promise((done) => setTimeout(() => setTimeout(() => setTimeout(done, 1000), 1000), 1000))",
    );
    expect(await summaryOf({ closetPage }, page)).toEqual(before);
    await page.bringToFront();
    expect(titlesOf(await badgesCome(hidden, 5))).toEqual([1, 2, 3, 4, 5].map((n) => `Shirt ${n}`));
    await page.close();
  });
});
