import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { oklabFromRgb8 } from "../../lib/color/convert.ts";
import { type HiddenParts, hiddenParts } from "../browser/hidden-parts.ts";
import { deltaE } from "../fit/slow-comparison.ts";
import { CLOTH, type LivingStore, listing, openLivingStore, tile } from "./living-store.ts";
import { badgesOf, until } from "./store-visit.ts";

let store: LivingStore;

beforeAll(async () => {
  store = await openLivingStore();
});
afterAll(() => store?.close());

/** A picture that only a page of the store may show: whoever else asks for it is turned away. */
const own = (name: string, color = "red") =>
  tile(name, `http://cdn.localhost:${store.cdn.port}/own/${name}/${color}`);
/** A picture whose address leads on to a host that nobody granted. */
const moved = (name: string, color: string) =>
  tile(name, `http://cdn.localhost:${store.cdn.port}/moved/${name}/${color}`);

/** A tile with something more beside its picture. */
const withMore = (html: string, more: string) => html.replace("</a>", `${more}</a>`);

const labelsOf = async (hidden: HiddenParts) =>
  Object.fromEntries(
    (await badgesOf(hidden)).map(({ attributes }) => {
      const label = attributes["aria-label"] ?? "";
      return [label.split(". ").at(-1) ?? "", { label, state: attributes["data-state"] }];
    }),
  );

/** Names of the products whose badges are in a state. */
const inState = async (hidden: HiddenParts, state: string) =>
  Object.entries(await labelsOf(hidden)).flatMap(([title, badge]) =>
    badge.state === state ? title.replace("Shirt ", "") : [],
  );

const opacities = async (hidden: HiddenParts) =>
  Promise.all((await badgesOf(hidden)).map((badge) => hidden.style(badge, "opacity")));

/** Opens a page and waits until all its pictures were given up. */
async function openUnread(path: string, html: string, count: number) {
  const opened = await store.open(path, { html });
  await until(`${count} unread pictures`, async () => {
    return (await inState(opened.hidden, "unreadable")).length === count;
  });
  return opened;
}

/** Presses the toolbar button and waits until what was read is on the badges, too. */
async function pressAndRead(page: Page, hidden: HiddenParts, names: readonly string[]) {
  const popup = await store.press(page);
  for (const name of names)
    await popup.waitFor(
      `[...document.querySelectorAll('.row-open')].some((b) => b.textContent === 'Shirt ${name}')`,
    );
  await until("badges on them", async () => {
    const ready = await inState(hidden, "ready");
    return names.every((name) => ready.includes(name));
  });
  return popup;
}

/** How far the colours that were read are from those that were drawn, at most; CIEDE2000. */
async function worstErrorOf(page: Page, colors: readonly (keyof typeof CLOTH)[]): Promise<number> {
  const { products } = await store.summary(page);
  const errors = colors.map((color, at) => {
    const [red, green, blue] = CLOTH[color];
    const [swatch] = products[at]?.candidate.palette.swatches ?? [];
    if (!swatch) throw new Error(`Nothing was read of product ${at}.`);
    return deltaE(swatch, { oklab: oklabFromRgb8(red, green, blue), share: 1 });
  });
  return Math.max(...errors);
}

describe("pictures that no request can get", () => {
  it("are read from the screen once the toolbar button is pressed, and not before", async () => {
    const { page, hidden } = await openUnread("/last-way", listing(own("a") + moved("b", "blue")), 2);
    await page.evaluate(() => {
      const noted: string[] = [];
      Object.assign(globalThis, { noted });
      new MutationObserver((all) => noted.push(...all.map(({ type }) => type))).observe(document, {
        subtree: true,
        childList: true,
        attributes: true,
        characterData: true,
      });
    });
    await page.mouse.move(100, 200);
    await page.evaluate("scrollTo(0, 1)");
    expect(await inState(hidden, "unreadable")).toEqual(["a", "b"]);

    const popup = await pressAndRead(page, hidden, ["a", "b"]);
    expect(await worstErrorOf(page, ["red", "blue"])).toBeLessThan(2);
    const { products } = await store.summary(page);
    for (const { candidate } of products) {
      expect(candidate.palette.evidence).toContain("screen");
      expect(candidate.palette.confidence).toBeLessThan(0.5);
    }
    await popup.click(".row-open", "Shirt a");
    await popup.waitFor(
      "document.querySelector('.row-reasons:not([hidden])')?.textContent.includes('screen')",
    );
    // Nothing that the page can observe has changed, and the badges are to be seen again.
    expect(await page.evaluate("noted")).toEqual([]);
    expect(await opacities(hidden)).toEqual(["1", "1"]);
    await popup.close();

    await page.reload();
    const again = await hiddenParts(page);
    await until("what was read before", async () => (await inState(again, "ready")).length === 2);
    await page.close();
  });

  it("are read right on an enlarged page, and past the badge that lies on them", async () => {
    const low = own("low", "blue").replace('height="260"', 'height="56"');
    const { page, hidden } = await openUnread("/enlarged", listing(own("tall") + low), 2);
    await store.zoom(page, 1.25);
    await page.waitForFunction("innerWidth < 1100");
    const popup = await pressAndRead(page, hidden, ["tall", "low"]);
    expect(await worstErrorOf(page, ["red", "blue"])).toBeLessThan(2);
    await popup.close();
    await store.zoom(page, 1);
    await page.close();
  });

  it("have their badges back where the popup closes before the snapshot is taken", async () => {
    const { page, hidden } = await openUnread("/closed", listing(own("c")), 1);
    const letGo = await store.holdStill(page);
    expect(await opacities(hidden)).toEqual(["0"]);
    await letGo();
    await until("the badge again", async () => (await opacities(hidden)).join() === "1");
    await page.close();
  });

  it("stay unread where something lies over them, alters them or cuts them off", async () => {
    const over = "position:absolute;inset:0;";
    const tiles = [
      own("bare"),
      withMore(
        own("linked"),
        `<span style="${over}">Quick view</span><button style="position:absolute;right:0;top:0">♥</button>`,
      ),
      withMore(
        own("hovered"),
        `<img alt="" style="${over}opacity:0" width="200" height="260" src="/pictures/x/blue">`,
      ),
      own("shaded").replace("media", "media shade"),
      withMore(own("sold"), `<span style="${over}inset:40%;pointer-events:none;background:#0a0">Sold</span>`),
      withMore(own("told"), `<span style="${over}padding:110px 40px">Coming in two weeks</span>`),
      own("faded").replace("<img", '<img style="opacity:.5"'),
      own("greyed").replace("<li", '<li style="filter:grayscale(1)"'),
      own("moving").replace("<img", '<img id="moving" style="position:relative"'),
      own("covered").replace("<img", '<img id="covered"'),
      own("cut"),
    ];
    const more = `<style>.shade::after{content:"";position:absolute;inset:0;background:#0004;pointer-events:none}</style>
      <div id="notice" style="position:fixed;width:220px;height:300px;background:#a0f">We bake cookies</div>
      <script>
        const box = document.querySelector("#covered").getBoundingClientRect();
        Object.assign(document.querySelector("#notice").style, { left: box.left + "px", top: box.top + 140 + "px" });
        const { style } = document.querySelector("#moving");
        let frame = 0;
        const move = () => { style.left = (++frame % 1000) / 100 + "px"; requestAnimationFrame(move); };
        requestAnimationFrame(move);
      </script>`;
    const { page, hidden } = await openUnread("/covered", listing(tiles.join(""), more), tiles.length);
    const popup = await pressAndRead(page, hidden, ["bare", "linked", "hovered"]);
    expect(await inState(hidden, "unreadable")).toEqual([
      "shaded",
      "sold",
      "told",
      "faded",
      "greyed",
      "moving",
      "covered",
      "cut",
    ]);
    await popup.close();
    await page.close();
  });
});
