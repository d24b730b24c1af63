import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../browser/open-browser.ts";
import { pngOf } from "../pixels/png-of.ts";
import { harnessPage } from "./harness-page.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let browser: Browser;
let html = "";

beforeAll(async () => {
  [browser, html] = await Promise.all([openBrowser(), harnessPage()]);
});

afterAll(() => browser.close());

interface Screen {
  readonly pieces: number;
  readonly width?: number;
  readonly scheme?: "light" | "dark";
  readonly wishlist?: boolean;
}

async function open({ pieces, width = 1280, scheme = "light", wishlist = false }: Screen): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height: 800 }, colorScheme: scheme });
  await page.setContent(html);
  if (wishlist) await page.evaluate('location.hash = "#wishlist"');
  await page.evaluate(`Harness.show(${pieces}, ${wishlist})`);
  await page.waitForSelector(wishlist ? ".wish-headline" : pieces > 0 ? ".piece-card" : ".quick-row");
  return page;
}

/** What axe-core finds against WCAG 2.2 A and AA and its own best practices, one line for each. */
async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  return page.evaluate(`(async () => {
    const { violations } = await axe.run(document, {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
    });
    return violations.map(({ id, nodes }) => id + ": " + nodes.slice(0, 3).map(({ html }) => html).join(" | "));
  })()`);
}

/** Pixels by which the page is wider than the window. */
const tooWide = (page: Page) =>
  page.evaluate<number>("document.documentElement.scrollWidth - document.documentElement.clientWidth");

/** Both widths and both schemes, each with every view. */
const SCREENS = [
  { width: 360, scheme: "dark" },
  { width: 1280, scheme: "light" },
].flatMap(({ width, scheme }) => [
  { width, scheme, pieces: 0 },
  { width, scheme, pieces: 12 },
  { width, scheme, pieces: 12, wishlist: true },
]) as readonly Screen[];

describe("every screen", () => {
  it.each(SCREENS)(
    "is clean to axe and fits its window: $width px, $scheme, $pieces pieces",
    async (screen) => {
      const page = await open(screen);
      expect(await violations(page)).toEqual([]);
      expect(await tooWide(page)).toBe(0);
      await page.close();
    },
  );

  it.each([360, 1280])("keeps a chosen piece, its dialog and its undo clean at %i px", async (width) => {
    const page = await open({ pieces: 12, width });
    await page.click(".piece-face");
    expect(await violations(page)).toEqual([]);
    await page.click("text=Edit");
    await page.click("text=Another colour");
    await page.click("text=Fine tuning");
    expect(await violations(page)).toEqual([]);
    expect(
      await page.evaluate(
        "document.querySelector('dialog').scrollWidth - document.querySelector('dialog').clientWidth",
      ),
    ).toBe(0);
    await page.keyboard.press("Escape");
    expect(await page.locator("dialog").count()).toBe(0);
    await page.click("text=Remove");
    await page.waitForSelector(".toast");
    expect(await violations(page)).toEqual([]);
    await page.close();
  });

  it.each([
    { width: 360, scheme: "light" },
    { width: 1280, scheme: "dark" },
  ] as const)(
    "keeps pointing in a photo clean, and the picture whole: $width px, $scheme",
    async (screen) => {
      const page = await open({ pieces: 12, ...screen });
      await page.click("text=Add from photos");
      const shapes = [
        [300, 1200],
        [1200, 300],
        [40, 40],
      ] as const;
      await page.setInputFiles(
        ".photo-form input[type=file]",
        shapes.map(([across, down]) => ({
          name: `skirt ${across}.png`,
          mimeType: "image/png",
          buffer: pngOf(across, down, () => [200, 180, 150, 255]),
        })),
      );
      for (const [at, [across, down]] of shapes.entries()) {
        await page.getByRole("button", { name: "Point at something white or grey" }).nth(at).click();
        await page.waitForFunction("document.querySelector('.light-pad img')?.naturalWidth > 0");
        const pad = page.locator(".light-pad");
        await page.waitForFunction(
          `Math.abs(Number(document.querySelector('.light-pad').style.getPropertyValue('--ratio')) - ${across / down}) < 1e-6`,
        );
        const [box, picture] = [await pad.boundingBox(), await pad.locator("img").boundingBox()];
        expect(picture).toEqual(box);
        // Nothing of it is letterboxed: a point of the pad is a point of the picture. Layout rounds to 1/64 px.
        expect((box?.width ?? 0) / (box?.height ?? 1)).toBeCloseTo(across / down, 1);
        expect(Math.max(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThan(200);
        expect(await page.evaluate("document.activeElement.getAttribute('role')")).toBe("slider");
      }
      await page.keyboard.press("Enter");
      await page.keyboard.press("Shift+ArrowUp");
      await page.getByRole("button", { name: "As photographed" }).waitFor();
      await page.getByRole("button", { name: "Point at something white or grey" }).first().click();
      await page.keyboard.press("Shift+ArrowUp");
      await page.keyboard.press("Enter");
      await page.locator(".light-pointer [role=alert]", { hasText: "too dark" }).waitFor();
      expect(await violations(page)).toEqual([]);
      expect(
        await page.evaluate(
          "document.querySelector('dialog').scrollWidth - document.querySelector('dialog').clientWidth",
        ),
      ).toBe(0);
      const low = await page.evaluate(
        "[...document.querySelectorAll('dialog button')].map((button) => button.getBoundingClientRect().height)",
      );
      expect(Math.min(...(low as number[]))).toBeGreaterThanOrEqual(24);
      await page.close();
    },
  );

  it.each([
    { pieces: 0, width: 320 },
    { pieces: 12, width: 320 },
    { pieces: 12, width: 640, wishlist: true },
  ])("still fits a narrow window when its text is twice as large: %o", async (screen) => {
    const page = await open(screen);
    await page.addStyleTag({ content: "html { font-size: 200% }" });
    expect(await tooWide(page)).toBe(0);
    await page.close();
  });

  it("offers nothing to press that is smaller than 24 px (WCAG 2.2, 2.5.8)", async () => {
    const page = await open({ pieces: 12, width: 360 });
    await page.click(".piece-face");
    // Links inside a sentence and the wheel, a spatial picker, are excepted by the criterion; a label is part of its target.
    const small =
      await page.evaluate(`[...document.querySelectorAll("button:not(.wheel-button), select, input:not(.unseen), label.slot-choice > span, .view-link")]
      .map((element) => element.closest("label") ?? element)
      .map((element) => [element.textContent, element.getBoundingClientRect()])
      .filter(([, box]) => box.width > 0 && (box.width < 24 || box.height < 24))
      .map(([text]) => text)`);
    expect(small).toEqual([]);
    await page.close();
  });
});

/** What has the focus: its name, or the tag of what has none of its own. */
const focused = (page: Page) =>
  page.evaluate<string>(
    `(({ activeElement: { ariaLabel, localName, textContent } }) =>
      ariaLabel ?? (["button", "a"].includes(localName) ? textContent : localName))(document)`,
  );

describe("by keyboard alone", () => {
  it.each(["Add a piece", "Add from photos"])("comes back to “%s” from its dialog", async (name) => {
    const page = await open({ pieces: 12 });
    await page.getByRole("button", { name }).focus();
    await page.keyboard.press("Enter");
    await page.waitForSelector("dialog[open]");
    await page.keyboard.press("Escape");
    await page.waitForSelector("dialog", { state: "detached" });
    expect(await focused(page)).toBe(name);
    await page.close();
  });

  it("is never sent back to the start of the page by what it removes", async () => {
    const page = await open({ pieces: 12 });
    const press = async (name: string) => {
      await page.getByRole("button", { name }).last().focus();
      await page.keyboard.press("Enter");
    };
    await press("Denim jeans");
    await page.locator(".kin-row").first().focus();
    await page.keyboard.press("Enter");
    await page.waitForFunction("!document.querySelector('#goes-with-title').textContent.includes('Denim')");
    const chosen = (await page.textContent("#goes-with-title"))?.replace("What goes with ", "") ?? "";
    expect(await page.evaluate("document.activeElement.id")).toBe("goes-with");
    await press("Choose none");
    await page.waitForSelector("#goes-with", { state: "detached" });
    expect(await focused(page)).toContain(chosen);
    expect(await page.evaluate("document.activeElement.className")).toBe("wheel-button");

    await press("Add a piece");
    await press("Another colour");
    await press("Take out");
    await page.waitForFunction("document.querySelectorAll('.swatch-row').length === 1");
    expect(await focused(page)).toBe("Change navy blue");
    await page.keyboard.press("Escape");

    await press("Add from photos");
    await page.setInputFiles(".photo-form input[type=file]", {
      name: "skirt.png",
      mimeType: "image/png",
      buffer: pngOf(40, 40, () => [200, 180, 150, 255]),
    });
    await press("Leave out");
    await page.waitForSelector(".photo-draft", { state: "detached" });
    expect(await page.evaluate("document.activeElement.type")).toBe("file");
    await page.close();
  });

  it.each([
    { screen: { pieces: 0, width: 360 }, within: ".quick-slots", foot: ".quick-foot" },
    { screen: { pieces: 12, width: 360 }, opener: "Add a piece", within: "dialog", foot: ".sheet-foot" },
  ])("finds nothing it reaches hidden under the foot: $within", async ({ screen, opener, within, foot }) => {
    const page = await open(screen);
    if (opener) await page.getByRole("button", { name: opener }).click();
    await page.locator(`${within} input, ${within} button`).first().focus();
    const hidden: string[] = [];
    for (let press = 0; press < 24; press++) {
      await page.keyboard.press("Tab");
      const covered = await page.evaluate<string>(`(() => {
        const shown = document.activeElement.closest("label") ?? document.activeElement;
        const foot = document.querySelector("${foot}");
        const inside = shown.matches("${within} *") && !foot.contains(shown);
        return inside && shown.getBoundingClientRect().bottom > foot.getBoundingClientRect().top + 1 ? shown.textContent : "";
      })()`);
      if (covered) hidden.push(covered);
    }
    expect(hidden).toEqual([]);
    await page.close();
  });

  it("chooses a piece on the wheel, removes it and takes that back", async () => {
    const page = await open({ pieces: 12 });
    for (let press = 0; press < 5; press++) await page.keyboard.press("Tab");
    const first = await focused(page);
    await page.keyboard.press("ArrowRight");
    const second = await focused(page);
    expect(second).not.toBe(first);
    await page.keyboard.press("Enter");
    const title = await page.textContent("#goes-with-title");
    const name = title?.replace("What goes with ", "") ?? "";
    expect(second).toContain(name);
    await page.locator(`[aria-label="Remove ${name}"]`).focus();
    await page.keyboard.press("Enter");
    await page.waitForSelector(".toast");
    expect(await page.locator(".piece-card").count()).toBe(11);
    expect(await focused(page)).toBe("Undo");
    await page.keyboard.press("Enter");
    await page.waitForFunction("document.querySelectorAll('.piece-card').length === 12");
    expect(await page.evaluate("document.activeElement.localName")).toBe("main");
    await page.close();
  });

  it("says how a person sees colours, and hears what looks alike to them", async () => {
    const page = await open({ pieces: 60 });
    await page.click(".piece-face:has-text('Linen shirt no. 15')");
    const told = () => page.locator(".kin-row", { hasText: "may look alike to you" }).count();
    const chosen = () => page.locator(".eyes-choice:has(:checked)").textContent();
    for (const show of await page.locator(".kin-group > button").all()) await show.click();
    expect(await told()).toBe(0);
    // One stop for the tab key before the closet file, then the arrows.
    await page.locator(".file-panel button").focus();
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("ArrowDown");
    await page.waitForSelector(".kin-row:has-text('may look alike to you')");
    expect(await chosen()).toContain("(protan)");
    await page.keyboard.press("ArrowDown");
    await page.waitForSelector(".eyes-choice:has(:checked):has-text('(deutan)')");
    expect(await told()).toBeGreaterThan(0);
    expect(await page.evaluate("document.activeElement.matches('.eyes-choice input:checked')")).toBe(true);
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowUp");
    await page.waitForFunction("!document.querySelector('.kin').textContent.includes('may look alike')");
    expect(await chosen()).toContain("No need");
    await page.close();
  });

  it("fills the closet from the quick start", async () => {
    const page = await open({ pieces: 0 });
    await page.locator(".quick-tick input").first().focus();
    await page.keyboard.press("Space");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowRight");
    await page.locator(".quick-foot button").focus();
    await page.keyboard.press("Enter");
    await page.waitForSelector(".piece-card");
    expect(await page.locator(".piece-name").allTextContents()).toEqual(["Cream shirt"]);
    await page.waitForSelector(".toast");
    expect(await focused(page)).toBe("main");
    await page.close();
  });
});

/** Between which distances from the wheel's middle, in units of its drawing, the words of its bands are drawn. */
async function wordsReach(page: Page): Promise<readonly [number, number]> {
  const style = await page.addStyleTag({
    content: `.wheel-drawing { background: #000 } .wheel-drawing svg * { visibility: hidden }
      .wheel-drawing .wheel-word { visibility: visible; fill: #fff; stroke: none }`,
  });
  const shot = (await page.locator(".wheel-drawing").screenshot()).toString("base64");
  await style.evaluate("(style) => style.remove()");
  return page.evaluate(`(async () => {
    const bitmap = await createImageBitmap(await (await fetch("data:image/png;base64,${shot}")).blob());
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
    context.drawImage(bitmap, 0, 0);
    const { data, width } = context.getImageData(0, 0, bitmap.width, bitmap.height);
    const box = document.querySelector(".wheel-drawing").getBoundingClientRect();
    const toWheel = document.querySelector(".wheel-drawing > svg").getScreenCTM().inverse();
    const away = [];
    for (let at = 0; at < data.length / 4; at++) {
      if (data[at * 4 + 1] < 128) continue;
      const x = Math.floor(box.left) + (at % width) + 0.5;
      const y = Math.floor(box.top) + Math.floor(at / width) + 0.5;
      const place = new DOMPoint(x, y).matrixTransform(toWheel);
      const distance = Math.hypot(place.x, place.y);
      // What lies beside the drawing's box at its edges is not black.
      if (distance < 130 && place.y < 118) away.push(distance);
    }
    return [Math.min(...away), Math.max(...away)];
  })()`);
}

describe("the words of the wheel", () => {
  it.each([
    { pieces: 3, width: 1280, scheme: "light" },
    { pieces: 14, width: 360, scheme: "dark" },
    { pieces: 300, width: 1280, scheme: "dark" },
  ] as const)(
    "stand between the dots and the ring: $pieces pieces, $width px, $scheme",
    async ({ pieces, ...screen }) => {
      const page = await open({ pieces, ...screen });
      // Of each three of these pieces at least two have a hue.
      for (const at of [0, 1]) {
        await page.locator(".piece-face").nth(at).click();
        await page.waitForSelector(".wheel-word");
        const farthest = await page.evaluate<number>(
          `Math.max(...[...document.querySelectorAll(".wheel-mark")].map(({ cx, cy, r }) => [cx, cy, r].map((side) => side.baseVal.value))
            .filter(([, y]) => y < 140).map(([x, y, r]) => Math.hypot(x, y) + r))`,
        );
        const ring = await page.evaluate<number>(
          `document.querySelector(".wheel-face > circle").r.baseVal.value`,
        );
        const [near, far] = await wordsReach(page);
        // Half a pixel, in units of the narrower wheel.
        expect(near).toBeGreaterThan(farthest - 0.5);
        expect(far).toBeLessThan(ring);
      }
      await page.close();
    },
  );
});

describe("300 pieces", () => {
  it("light a card's dot without touching any other card", async () => {
    const page = await open({ pieces: 300 });
    await page.evaluate(`(() => {
      globalThis.touched = new Set();
      new MutationObserver((records) => {
        for (const { target } of records) touched.add(target.closest?.(".piece-card") ?? target);
      }).observe(document.querySelector(".closet-pieces"), { subtree: true, attributes: true, childList: true });
    })()`);
    await page.hover(".piece-card:nth-child(3)");
    await page.waitForSelector(".wheel-halo");
    expect(await page.evaluate("touched.size")).toBe(1);
    expect(await page.locator(".wheel-halo").count()).toBe(1);
    await page.close();
  });

  it("light the card of the dot nearest to the pointer", async () => {
    const page = await open({ pieces: 300 });
    const box = await page.locator(".wheel-button").nth(40).boundingBox();
    const label = await page.locator(".wheel-button").nth(40).getAttribute("aria-label");
    if (!box) throw new Error("The dot has no place.");
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.waitForSelector(".piece-card.lit");
    const name = await page.locator(".piece-card.lit .piece-name").textContent();
    expect(label).toContain(name ?? "nothing");
    await page.mouse.down();
    await page.mouse.up();
    expect(await page.textContent("#goes-with-title")).toBe(`What goes with ${name}`);
    await page.close();
  });

  it("stand clear of one another: few dots lie nearly on another", async () => {
    const page = await open({ pieces: 300 });
    const covered = await page.evaluate<number>(`(() => {
      const dots = [...document.querySelectorAll(".wheel-mark")].map((dot) => [dot.cx.baseVal.value, dot.cy.baseVal.value]);
      const radius = document.querySelector(".wheel-mark").r.baseVal.value;
      return dots.filter(([x, y], at) => dots.some(([u, v], other) => other > at && Math.hypot(x - u, y - v) < radius)).length;
    })()`);
    expect(covered).toBeLessThan(30);
    await page.close();
  });
});
