import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { HiddenNode, HiddenParts } from "../browser/hidden-parts.ts";
import { type LivingStore, listing, openLivingStore, tile, tiles } from "./living-store.ts";
import { badgesOf, until } from "./store-visit.ts";

let store: LivingStore;

beforeAll(async () => {
  store = await openLivingStore();
});
afterAll(() => store?.close());

/** A tile with something more on its picture; where that is the price, it is the only one. */
const withOwn = (markup: string, more: string) =>
  markup
    .replace("</a>", `${more}</a>`)
    .replace(more.includes("20.00") ? /<span class="price">.*?<\/span>/ : "", "");

/** What lies at the middle of a badge, as the page sees it. */
async function hit(page: Page, hidden: HiddenParts, badge: HiddenNode | undefined): Promise<string> {
  const box = badge && (await hidden.box(badge));
  if (!box) return "not drawn";
  return page.evaluate(
    ([x = 0, y = 0]) => {
      const found = document.elementFromPoint(x, y);
      return found?.matches("span[hidden]") ? "badge" : (found?.localName ?? "nothing");
    },
    [box.x + box.width / 2, box.y + box.height / 2],
  );
}

describe("a badge among a page's own things", () => {
  it("can be pressed through a link that a theme stretches over the whole tile, and the link works beside it", async () => {
    const stretched = `<style>li{position:relative}.media{z-index:0}
      h3 a::after{content:"";position:absolute;inset:0;z-index:1}</style>`;
    const { page, hidden, badges } = await store.show("/stretched", listing(tiles(4), stretched), 4);
    await until("a badge on top", async () => (await hit(page, hidden, badges[0])) === "badge");
    await page.mouse.click(60, 120);
    await page.waitForURL("**/p/0");
    await page.close();
  });

  it("is as hidden as its tile, and catches no press there", async () => {
    const { page, hidden, badges } = await store.show("/hidden", listing(tiles(4)), 4);
    for (const css of ["visibility:hidden", "opacity:0;pointer-events:none"]) {
      await page.evaluate((style) => document.querySelector("li")?.setAttribute("style", style), css);
      expect([css, await hit(page, hidden, badges[0])]).not.toEqual([css, "badge"]);
    }
    await page.evaluate(() => document.querySelector("li")?.setAttribute("style", "display:none"));
    await until("the badge to go", async () => badges[0] && (await hidden.box(badges[0])) === null);
    await page.evaluate(() => document.querySelector("li")?.removeAttribute("style"));
    await until("the badge to come back", async () => (await hit(page, hidden, badges[0])) === "badge");
    await page.close();
  });

  it("goes under a sticky header and a modal, whether or not its tile is positioned", async () => {
    for (const position of ["relative", "static"]) {
      const header = `<style>.media{position:${position}!important}header{position:sticky;top:0;height:330px;background:#fff}
        .above{z-index:1}</style><header class="${position === "relative" ? "above" : ""}">The store</header>`;
      const { page, hidden } = await store.show(
        `/header-${position}`,
        listing(tiles(40)).replace("<h1>", `${header}<h1>`),
        15,
      );
      await page.evaluate("scrollTo(0, 420)");
      const underHeader = async () => {
        const boxes = await Promise.all((await badgesOf(hidden)).map((badge) => hidden.box(badge)));
        return boxes.flatMap((box) => (box && box.y > 0 && box.y + box.height < 330 ? box : []));
      };
      await until("no badge over the header", async () => {
        const hits = (await underHeader()).map(({ x, y }) =>
          page.evaluate(
            ([left = 0, top = 0]) => document.elementFromPoint(left, top)?.localName,
            [x + 9, y + 9],
          ),
        );
        return (await Promise.all(hits)).every((name) => name === "header");
      });
      await page.evaluate(() => {
        const modal = document.createElement("aside");
        modal.style.cssText = "position:fixed;inset:0;background:#fff;z-index:5";
        document.body.append(modal);
      });
      const over = await page.evaluate(() => document.elementFromPoint(60, 500)?.localName);
      expect(over).toBe("aside");
      const all = await badgesOf(hidden);
      for (const badge of all) expect(await hit(page, hidden, badge)).not.toBe("badge");
      await page.close();
    }
  });

  it("covers neither price nor heart where there is room beside them", async () => {
    const own = [
      `<button style="right:8px;bottom:8px;width:36px;height:36px">\u2661</button>`,
      `<span class="cost" style="left:0;bottom:0;width:90px">\u20ac 20.00</span>`,
      `<span class="cost" style="left:0;right:0;bottom:0">\u20ac 20.00</span>`,
      `<button style="left:0;right:0;bottom:0;height:44px;opacity:0">Add</button><i class="cost" style="top:0;left:0">New</i>`,
    ];
    const markup = own.map((more, at) => withOwn(tile(String(at)), more)).join("");
    const style = "<style>.media>*+*:not([hidden]){position:absolute}</style>";
    const { page, hidden, badges } = await store.show("/room", listing(markup, style), own.length);
    await page.waitForTimeout(100);
    const taken = await page.evaluate(() =>
      [...document.querySelectorAll(".media > button, .cost")].map((element) => {
        const { left, top, right, bottom } = element.getBoundingClientRect();
        return { left, top, right, bottom };
      }),
    );
    expect(taken).toHaveLength(5);
    for (const badge of badges) {
      const box = await hidden.box(badge);
      if (!box) throw new Error("A badge is not drawn.");
      expect(box.width).toBeGreaterThan(60);
      for (const { left, top, right, bottom } of taken) {
        const apart =
          box.x >= right || box.x + box.width <= left || box.y >= bottom || box.y + box.height <= top;
        expect(apart).toBe(true);
      }
    }
    await page.close();
  });

  it("makes no difference to rules about the last child: nothing moves, nothing appears", async () => {
    const rules = `<style>li{position:relative}.media:nth-child(odd){position:static}li>*{margin-bottom:10px!important}
      li>:last-child{margin-bottom:0!important}.two img{transition:opacity .3s}.two img:last-child{opacity:0}
      .over ~ h3 a::after{content:"";position:absolute;inset:0;z-index:1}</style>`;
    const two = tile("two")
      .replace('class="media"', 'class="media two" style="position:relative"')
      .replace(
        "</a>",
        '<img alt="" width="200" height="260" style="position:absolute;inset:0" src="/pictures/x/blue"></a>',
      );
    const over = tile("over").replace(
      'class="media"',
      'class="media over" style="position:relative;z-index:0"',
    );
    const { page } = await store.show("/last", listing(tile("one") + two + over, rules), 3);
    await page.waitForTimeout(400);
    const seen = await page.evaluate(() => ({
      heights: [...document.querySelectorAll("li")].map(({ offsetHeight }) => offsetHeight),
      opacity: getComputedStyle(document.querySelectorAll(".two img")[1] ?? document.body).opacity,
    }));
    expect(seen).toEqual({ heights: [320, 320, 320], opacity: "0" });
    await page.close();
  });
});

describe("a page that must not notice", () => {
  it("keeps every box, attribute and child, hears no event, and asks for nothing but pictures without credentials", async () => {
    const far = (name: string) => `http://cdn.localhost:${store.cdn.port}/${name}`;
    const more = tile("open", far("open/red")) + tile("shut", far("shut/blue"));
    const script = `<script>
      globalThis.noticed = [];
      const note = (what) => noticed.push(what);
      new MutationObserver((records) => {
        for (const { type, target, attributeName, addedNodes, removedNodes } of records) {
          for (const node of [...addedNodes, ...removedNodes]) if (!node.matches?.("span[hidden]")) note(node.nodeName);
          if (type !== "childList" && !target.matches?.("span[hidden]")) note(type + " " + attributeName);
        }
      }).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
      addEventListener("load", () => {
        noticed.length = 0;
        new PerformanceObserver((list) => list.getEntries().forEach(() => note("shift"))).observe({ type: "layout-shift" });
        // The first frame may be revealed before or after the load, with us or without.
        for (const type in window) if (type.startsWith("on") && type !== "onpagereveal")
          addEventListener(type.slice(2), (event) => note("event " + event.type), true);
      });
    </script>`;
    const html = listing(tiles(6, 900) + more).replace("<h1>", `${script}<h1>`);
    const boxesOf = (page: Page) =>
      page.evaluate(() =>
        [...document.querySelectorAll("body, body *:not([hidden])")].map((element) => {
          const { x, y, width, height } = element.getBoundingClientRect();
          return [element.localName, x, y, width, height].join(" ");
        }),
      );
    const noticedBy = (page: Page) => page.evaluate<string[]>("[...new Set(noticed)].sort()");
    const requests = () => [...store.shop.seen, ...store.cdn.seen];
    const alone = await store.open("/alone", { html }, "127.0.0.1");
    for (const url of [store.shopUrl, far("")])
      await alone.page.context().addCookies([{ name: "who", value: "a-person", url }]);
    await alone.page.waitForLoadState("networkidle");
    const usual = { boxes: await boxesOf(alone.page), noticed: await noticedBy(alone.page) };
    await alone.page.close();
    const earlier = new Set(requests());

    const { page, hidden } = await store.show("/noticed", html, 8);
    await page.waitForLoadState("networkidle");
    expect(await badgesOf(hidden)).toHaveLength(8);
    expect({ boxes: await boxesOf(page), noticed: await noticedBy(page) }).toEqual(usual);
    const asked = requests().filter((request) => !earlier.has(request));
    // The page itself asks with its cookie; what we ask for again is a picture and bears none.
    const ours = asked.filter(({ headers }) => headers["sec-fetch-dest"] === "empty");
    expect(new Set(ours.map(({ url }) => url))).toEqual(new Set(["/shut/blue"]));
    for (const { headers } of ours) expect(headers).not.toHaveProperty("cookie");
    const theirs = asked.filter((request) => !ours.includes(request) && request.url !== "/favicon.ico");
    expect(theirs).toHaveLength(1 + 8);
    expect(theirs.some(({ headers }) => headers.cookie === "who=a-person")).toBe(true);
    await page.close();
  });

  it("hears every key and press that is not on a badge", async () => {
    const script = `<script>globalThis.heard = [];
      for (const type of ["keydown", "keyup", "mousedown", "mouseup", "click", "wheel"])
        document.addEventListener(type, (event) => { heard.push(type); event.preventDefault(); });</script>`;
    const { page } = await store.show("/heard", listing(tiles(4), script), 4);
    await page.mouse.click(60, 120);
    await page.keyboard.press("Escape");
    await page.mouse.wheel(0, 10);
    await until("the wheel", () => page.evaluate("heard.includes('wheel')"));
    const heard = ["mousedown", "mouseup", "click", "keydown", "keyup", "wheel"];
    expect(await page.evaluate("heard")).toEqual(heard);
    await page.close();
  });

  it("finds its own markup alone when it takes that over, though the code for it comes after the page", async () => {
    const script = `<script src="/entry.js?wait=300"></script><script>
      globalThis.foreign = [];
      const takeOver = () => foreign.push(document.querySelectorAll("#list span[hidden]").length);
      const piece = (name, then) => {
        const script = document.createElement("script");
        script.src = name;
        script.onload = script.onerror = then;
        document.head.append(script);
      };
      addEventListener("DOMContentLoaded", takeOver);
      addEventListener("load", () => {
        takeOver();
        requestIdleCallback(takeOver);
        piece("/one.js", takeOver);
      });</script>`;
    const { page } = await store.show("/hydrated", listing(tiles(4)).replace("<h1>", `${script}<h1>`), 4);
    expect(await page.evaluate("foreign")).toEqual([0, 0, 0, 0]);
    await page.close();
  });

  it("is left alone while nothing happens", async () => {
    const { page } = await store.show("/idle", listing(tiles(8)), 8);
    const browser = page.context().browser();
    if (!browser) throw new Error("This Chromium gives no browser-wide session.");
    const session = await browser.newBrowserCDPSession();
    const running: string[] = [];
    session.on("Tracing.dataCollected", ({ value }) => {
      for (const { name } of value as { name: string }[])
        if (/^(FunctionCall|TimerFire|FireAnimationFrame|FireIdleCallback|EventDispatch)$/.test(name))
          running.push(name);
    });
    // Longer than any wait of ours that ends by itself.
    await page.waitForTimeout(1_000);
    await session.send("Tracing.start", {
      transferMode: "ReportEvents",
      traceConfig: { includedCategories: ["devtools.timeline"] },
    });
    await page.waitForTimeout(1_000);
    const complete = new Promise<unknown>((done) => session.once("Tracing.tracingComplete", done));
    await session.send("Tracing.end");
    await complete;
    expect(running).toEqual([]);
    await page.close();
  });

  it("has one badge a product though the script is started twice", async () => {
    const { page, hidden } = await store.show("/twice", listing(tiles(4)), 4);
    await store.startAgain(page);
    await page.waitForTimeout(500);
    expect(await badgesOf(hidden)).toHaveLength(4);
    await page.close();
  });

  it("has what it shows in frames left alone", async () => {
    const frame = `<iframe srcdoc="${listing(tiles(2)).replaceAll('"', "&quot;")}"></iframe><iframe src="/twice"></iframe>`;
    const { page, hidden } = await store.show("/frames", listing(tiles(4), frame), 4);
    const inFrames = await Promise.all(
      page
        .frames()
        .slice(1)
        .map((one) => one.evaluate(() => document.querySelectorAll("li, span[hidden]").length)),
    );
    expect(inFrames).toEqual([2, 4]);
    expect(await badgesOf(hidden)).toHaveLength(4);
    await page.close();
  });
});
