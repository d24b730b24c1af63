import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type * as RoomModule from "./badge-room.ts";
import { exampleCard } from "./example-card.ts";
import { chip, drawn, storePage } from "./store-page.ts";
import { picture } from "./tiles.ts";

declare const Room: typeof RoomModule;
declare const axe: {
  run(context: unknown): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
};

const tileAt = (place: string) =>
  `<div class="tile" style="position:absolute;${place};width:160px;height:200px"><div class="picture" style="position:relative;height:200px;background:#777"></div></div>`;

/** A page with one badge, its card open. */
async function openCard(
  place = "left:20px;top:20px",
  options: Parameters<typeof storePage>[1] = {},
  cardModel: Parameters<typeof RoomModule.badgeAll>[1] = {},
): Promise<Page> {
  const page = await storePage(tileAt(place), options);
  await page.evaluate((model) => {
    Room.badgeAll({}, model);
  }, cardModel);
  await drawn(page);
  await chip(page).focus();
  await page.keyboard.press("Enter");
  await drawn(page);
  return page;
}

const card = (page: Page) => page.locator(".card");
const button = (page: Page, name: string) => card(page).getByRole("button", { name });
const pressed = (page: Page) => page.evaluate(() => Room.pressed.slice(1));
const isOpen = (page: Page) => page.evaluate(() => document.querySelector("[popover]") !== null);

describe("the card", () => {
  for (const width of [320, 1280]) {
    for (const place of ["right:0;top:0", "left:0;bottom:0"]) {
      it(`is inside the view and off its badge where there is room: ${width} px, ${place}`, async () => {
        const page = await openCard(place, { width });
        const box = await card(page).boundingBox();
        const badge = await chip(page).boundingBox();
        if (!box || !badge) throw new Error("no box");
        expect(box.x).toBeGreaterThanOrEqual(8);
        expect(box.y).toBeGreaterThanOrEqual(8);
        expect(box.x + box.width).toBeLessThanOrEqual(width - 8);
        expect(box.y + box.height).toBeLessThanOrEqual(600 - 8);
        const beside = box.x >= badge.x + badge.width || box.x + box.width <= badge.x;
        if (width >= 1280) expect(beside).toBe(true);
        await page.close();
      });
    }
  }

  it("lies over everything a page can draw, and scrolls inside itself", async () => {
    const page = await openCard();
    const found = await card(page).evaluate((panel) => {
      const cover = document.createElement("div");
      cover.style.cssText = "position:fixed;inset:0;z-index:2147483647;background:red";
      document.body.append(cover);
      const { x, y } = panel.getBoundingClientRect();
      return [
        document.elementFromPoint(x + 20, y + 20)?.matches("[popover]"),
        panel.scrollHeight > panel.clientHeight,
      ];
    });
    expect(found).toEqual([true, true]);
    await page.close();
  });

  /** How a page sends the tile along by itself. */
  const SENT = {
    "a carousel that never rests": `const step = () => { list.scrollLeft = (list.scrollLeft + 1) % 300; requestAnimationFrame(step); }; step()`,
    "a smooth scroll": `const send = () => list.scrollTo({ left: list.scrollLeft > 200 ? 0 : 400, behavior: "smooth" }); send(); setInterval(send, 900)`,
    "a carousel that slides its list": `const step = () => { row.style.translate = -(performance.now() / 10 % 300) + "px"; dispatchEvent(new Event("scroll")); dispatchEvent(new Event("resize")); requestAnimationFrame(step); }; step()`,
  };
  for (const [name, script] of Object.entries(SENT)) {
    it(`stays where it opened and takes a press while its badge goes along with ${name}`, async () => {
      const page = await storePage(
        `<div id="list" style="position:absolute;left:0;top:0;width:300px;height:300px;overflow:auto"><div id="row" style="width:900px;padding-left:80px"><div class="tile" style="position:relative">${picture()}</div></div></div>`,
      );
      await page.evaluate(() => {
        Room.badgeAll();
      });
      await drawn(page);
      await chip(page).click();
      await drawn(page);
      const before = await card(page).boundingBox();
      const badge = await chip(page).boundingBox();
      await page.evaluate(`${script};0`);
      await page.waitForFunction(
        ([selector, x]) => {
          const hosts = [...document.querySelectorAll("span[hidden]")].flatMap(
            (host) => host.shadowRoot ?? [],
          );
          const chips = hosts.flatMap((root) => [...root.querySelectorAll(selector)]);
          return chips.some((one) => Math.abs(one.getBoundingClientRect().x - x) > 20);
        },
        [".chip", badge?.x ?? 0] as const,
      );
      expect(await card(page).boundingBox()).toEqual(before);
      const save = await button(page, "Save to wishlist").boundingBox();
      if (!save) throw new Error("no button");
      await page.mouse.click(save.x + save.width / 2, save.y + save.height / 2);
      await button(page, "Take off wishlist").waitFor();
      expect(await pressed(page)).toEqual([["toggleWish"]]);
      await page.close();
    });
  }

  it("stays where it is while its badge is hidden with its tile, whatever becomes of its own size", async () => {
    const page = await storePage(
      `<div id="list" style="height:300px;width:300px;overflow:auto"><div class="tile">${picture()}</div><div style="height:900px"></div></div>`,
    );
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    await chip(page).click();
    await drawn(page);
    const before = await card(page).boundingBox();
    await page.evaluate(() => document.querySelector("#list")?.scrollTo(0, 800));
    await drawn(page);
    expect(await chip(page).isVisible()).toBe(false);
    await page.evaluate(() => document.querySelector("#list")?.scrollTo(0, 850));
    await drawn(page);
    expect(await card(page).boundingBox()).toEqual(before);
    await button(page, "Not this colour").click();
    await drawn(page);
    const other = await card(page).boundingBox();
    expect(other?.height).not.toBe(before?.height);
    expect([other?.x, other?.y]).toEqual([before?.x, before?.y]);
    await page.close();
  });

  it("is put beside its badge anew when the window changes", async () => {
    const page = await openCard("right:20px;top:20px");
    await page.setViewportSize({ width: 600, height: 500 });
    await drawn(page);
    const box = await card(page).boundingBox();
    const badge = await chip(page).boundingBox();
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBe((badge?.x ?? 0) - 8);
    await page.close();
  });

  it("closes with Escape and gives the focus back to its badge", async () => {
    const page = await openCard();
    expect(await chip(page).getAttribute("aria-expanded")).toBe("true");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Escape");
    await drawn(page);
    expect(await isOpen(page)).toBe(false);
    expect(await chip(page).getAttribute("aria-expanded")).toBe("false");
    expect(
      await chip(page).evaluate((badge) => (badge.getRootNode() as ShadowRoot).activeElement === badge),
    ).toBe(true);
    await page.close();
  });

  it("lets the tab key reach each reason by its piece's name, clear of the foot", async () => {
    const { pieces } = exampleCard;
    const six = [...pieces, ...pieces].map((piece, at) => ({
      ...piece,
      name: `Skirt ${at}`,
      why: "Opposites.",
    }));
    const page = await openCard("left:20px;top:20px", { width: 320 }, { pieces: six });
    const reached: (string | null)[] = [];
    const clear: boolean[] = [];
    await page.keyboard.press("Tab");
    for (let at = 0; at < six.length; at++) {
      await page.keyboard.press("Tab");
      const [name, bottom, foot] = await card(page).evaluate((panel) => {
        const shown = (panel.getRootNode() as ShadowRoot).activeElement;
        const edgeOf = (element: Element | null | undefined) => element?.getBoundingClientRect();
        return [
          shown?.querySelector("span")?.shadowRoot?.querySelector("[role=img]")?.ariaLabel ?? null,
          edgeOf(shown)?.bottom ?? Number.NaN,
          edgeOf(panel.querySelector(".foot"))?.top ?? Number.NaN,
        ] as const;
      });
      reached.push(name);
      clear.push(bottom <= foot);
    }
    expect(reached).toEqual(six.map(({ name }) => `Why: ${name}`));
    expect(clear).toEqual(six.map(() => true));
    await page.close();
  });

  it("closes with its own button, by a press beside it and by a second one on the badge", async () => {
    const page = await openCard();
    await button(page, "Close").click();
    await drawn(page);
    expect(await isOpen(page)).toBe(false);
    await chip(page).click();
    await drawn(page);
    expect(await isOpen(page)).toBe(true);
    await page.mouse.click(780, 580);
    await drawn(page);
    expect(await isOpen(page)).toBe(false);
    for (const open of [true, false]) {
      await chip(page).click();
      await drawn(page);
      expect(await isOpen(page)).toBe(open);
    }
    await page.close();
  });

  it("can be reached inside a modal dialog of the page", async () => {
    const page = await storePage(
      `<dialog style="width:600px;height:500px">${tileAt("left:0;top:0")}</dialog>`,
    );
    await page.evaluate(() => {
      document.querySelector("dialog")?.showModal();
      Room.badgeAll();
    });
    await drawn(page);
    await chip(page).click();
    await drawn(page);
    await button(page, "I own this").click();
    expect(await pressed(page)).toEqual([["own", null]]);
    await page.close();
  });

  it("takes no press from a script of the page", async () => {
    const page = await openCard();
    await card(page).evaluate((panel) => {
      for (const control of panel.querySelectorAll("button")) {
        control.click();
        control.dispatchEvent(new MouseEvent("click", { bubbles: true }));
      }
    });
    expect(await pressed(page)).toEqual([]);
    expect(await isOpen(page)).toBe(true);
    await page.close();
  });

  it("tells the page nothing of keys and presses inside it", async () => {
    const page = await openCard();
    await page.evaluate(() => {
      const heard: string[] = [];
      Object.assign(globalThis, { heard });
      for (const type of ["click", "pointerdown", "keydown", "keyup"])
        document.addEventListener(type, () => heard.push(type));
    });
    await button(page, "Save to wishlist").click();
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard)).toEqual([]);
    await page.close();
  });
});

describe("what a person does on the card", () => {
  it("saves to the wishlist and takes off again", async () => {
    const page = await openCard();
    await button(page, "Save to wishlist").click();
    await button(page, "Take off wishlist").click();
    await button(page, "Save to wishlist").waitFor();
    expect(await pressed(page)).toEqual([["toggleWish"], ["toggleWish"]]);
    await card(page).getByRole("status").getByText("Taken off your wishlist.").waitFor();
    await page.close();
  });

  it("adds to the closet once, after asking where it is worn if that is unknown", async () => {
    const page = await openCard("left:20px;top:20px", {}, { slots: ["Top", "Bottom"] });
    await button(page, "I own this").click();
    await button(page, "Bottom").click();
    await button(page, "In your closet").click({ force: true });
    expect(await pressed(page)).toEqual([["own", 1]]);
    expect(await button(page, "In your closet").getAttribute("aria-disabled")).toBe("true");
    await page.close();
  });

  it("points at the colour with the mouse", async () => {
    const page = await openCard();
    await button(page, "Not this colour").click();
    await card(page)
      .locator("canvas")
      .click({ position: { x: 30, y: 50 } });
    await button(page, "This is the colour").click();
    expect(await pressed(page)).toEqual([["pickPlace", 30, 50]]);
    await page.close();
  });

  it("points at the colour with the arrow keys and sees which it is", async () => {
    const page = await openCard();
    await button(page, "Not this colour").press("Enter");
    await card(page).locator(".pad").focus();
    const found = () =>
      card(page)
        .locator(".found .part")
        .evaluate((part) => getComputedStyle(part).backgroundColor);
    expect(await found()).toBe("rgb(20, 90, 160)");
    await page.keyboard.press("Shift+ArrowLeft");
    await page.keyboard.press("ArrowUp");
    expect(await found()).toBe("rgb(200, 30, 60)");
    await page.keyboard.press("Enter");
    expect(await pressed(page)).toEqual([["pickPlace", 84, 48]]);
    await page.close();
  });

  it("chooses the colour by its name", async () => {
    const page = await openCard();
    await button(page, "Not this colour").click();
    await button(page, "forest green").click();
    expect(await pressed(page)).toEqual([["pickChoice", 3]]);
    await page.close();
  });

  it("goes back to the picture's own colour", async () => {
    const page = await openCard("left:20px;top:20px", {}, { corrected: true });
    expect(await card(page).getByText("as you said").count()).toBe(1);
    await button(page, "Not this colour").click();
    await button(page, "Go by the picture again").click();
    expect(await pressed(page)).toEqual([["unpick"]]);
    await page.close();
  });
});

describe("accessibility of the card and the badge", () => {
  const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  const views = {
    card: async (_: Page) => undefined,
    picker: async (page: Page) => {
      await button(page, "Not this colour").click();
      await card(page).locator("canvas").waitFor();
    },
  };
  for (const dark of [false, true]) {
    for (const [name, prepare] of Object.entries(views)) {
      it(`has no violation axe finds: ${name}, ${dark ? "dark" : "light"}`, async () => {
        const page = await openCard("left:20px;top:20px", { dark });
        await prepare(page);
        await page.evaluate(source);
        const violations = await page.evaluate(async () => {
          const result = await axe.run({ include: [...document.querySelectorAll("span[hidden]")] });
          return result.violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
        });
        expect(violations).toEqual([]);
        await page.close();
      });
    }
  }

  it("has no control under 24 px", async () => {
    const page = await openCard();
    for (const open of [async () => undefined, () => button(page, "Not this colour").click()]) {
      await open();
      for (const control of await card(page).getByRole("button").all()) {
        const box = await control.boundingBox();
        expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
      }
    }
    await page.close();
  });
});
