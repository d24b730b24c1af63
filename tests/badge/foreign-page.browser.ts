import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type * as RoomModule from "./badge-room.ts";
import { chip, drawn, storePage } from "./store-page.ts";
import { TILES } from "./tiles.ts";

declare const Room: typeof RoomModule;

describe("what a page can do to a badge", () => {
  it("cannot look into it", async () => {
    const page = await storePage(TILES.positioned, { open: false });
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    expect(
      await page.evaluate(() => {
        const host = document.querySelector("span[hidden]");
        return [host?.shadowRoot, host?.textContent, host?.outerHTML];
      }),
    ).toEqual([null, "", '<span hidden=""></span>']);
    await page.close();
  });

  it("cannot restyle it", async () => {
    const look = async (css: string) => {
      const page = await storePage(`<style>${css}</style>${TILES.positioned}`);
      await page.evaluate(() => {
        Room.badgeAll();
      });
      await drawn(page);
      const found = await chip(page).evaluate((button) => {
        const { color, backgroundColor, fontSize, opacity, visibility, direction } = getComputedStyle(button);
        return [
          color,
          backgroundColor,
          fontSize,
          opacity,
          visibility,
          direction,
          JSON.stringify(button.getBoundingClientRect()),
        ];
      });
      await page.close();
      return found;
    };
    const hostile = `
      span[hidden] { position: static !important; display: none !important; opacity: 0 !important; visibility: hidden !important;
        --ink: red !important; --paper: red !important; transform: scale(3) !important; font-size: 40px !important; }
      .tile { direction: rtl; color: lime; } .tile > * { position: relative !important; left: 50px !important; }
      button, span { color: lime !important; background: red !important; padding: 40px !important; }`;
    // The hostile page also moves its own picture: by layout, so take that rule for both.
    expect(await look(`.tile > img { position: relative; left: 50px } ${hostile}`)).toEqual(
      await look(".tile > img { position: relative; left: 50px }"),
    );
  });

  it("cannot keep it from being drawn by the strictest policy", async () => {
    const page = await storePage(TILES.positioned, {
      headers: {
        "content-security-policy":
          "default-src 'none'; img-src data:; require-trusted-types-for 'script'; trusted-types 'none'",
      },
    });
    const errors: string[] = [];
    page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
    page.on("pageerror", (error) => errors.push(error.message));
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    await chip(page).click();
    await drawn(page);
    const colors = await page.evaluate(() =>
      [...document.querySelectorAll("span[hidden]")].map((host) => {
        const root = host.shadowRoot;
        const sealed = [...(root?.querySelectorAll("span") ?? [])].flatMap((one) => one.shadowRoot ?? []);
        const find = (selector: string) =>
          [root, ...sealed].map((tree) => tree?.querySelector(selector)).find((found) => found);
        return [find(".chip,.card"), find(".part")].map(
          (element) => element && getComputedStyle(element).backgroundColor,
        );
      }),
    );
    expect(colors).toEqual(Array(2).fill(["rgb(250, 250, 248)", "oklab(0.5 0.17 0.08)"]));
    expect(errors.filter((error) => !error.includes("style-src"))).toEqual([]);
    await page.close();
  });

  it("cannot press it", async () => {
    const page = await storePage(TILES.positioned);
    const pressed = await page.evaluate(() => {
      Room.badgeAll();
      const host = document.querySelector<HTMLElement>("span[hidden]");
      const button = host?.shadowRoot?.querySelector("button");
      host?.click();
      button?.click();
      for (const type of ["click", "keydown"])
        button?.dispatchEvent(new Event(type, { bubbles: true, composed: true }));
      return Room.pressed;
    });
    expect(pressed).toEqual([]);
    await page.close();
  });
});

describe("pressing a badge", () => {
  const inLink = async () => {
    const page = await storePage(TILES.link);
    await page.evaluate(() => {
      Room.badgeAll();
      const heard: string[] = [];
      Object.assign(globalThis, { heard });
      for (const type of ["click", "mousedown", "pointerdown", "keydown", "touchstart"]) {
        document.addEventListener(type, () => heard.push(type));
      }
    });
    await drawn(page);
    return page;
  };
  const outcome = (page: Page) =>
    page.evaluate(() => [Room.pressed, (globalThis as unknown as { heard: string[] }).heard, location.hash]);

  it("by mouse opens the card, follows no link and tells the page nothing", async () => {
    const page = await inLink();
    await chip(page).click();
    expect(await outcome(page)).toEqual([["badge"], [], ""]);
    await page.close();
  });

  it("by touch does the same", async () => {
    const page = await inLink();
    await chip(page).tap();
    expect(await outcome(page)).toEqual([["badge"], [], ""]);
    await page.close();
  });

  for (const key of ["Enter", "Space"]) {
    it(`by ${key} does the same`, async () => {
      const page = await inLink();
      await chip(page).focus();
      await page.keyboard.press(key);
      expect(await outcome(page)).toEqual([["badge"], [], ""]);
      await page.close();
    });
  }

  it("leaves the link around it working", async () => {
    const page = await inLink();
    await page.locator("img").click({ position: { x: 100, y: 40 } });
    expect(await page.evaluate(() => location.hash)).toBe("#away");
    await page.close();
  });
});
