import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type * as RoomModule from "./badge-room.ts";
import { chip, drawn, storePage } from "./store-page.ts";

declare const Room: typeof RoomModule;

const DOT =
  "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='200' height='260'%3E%3C/svg%3E";
const picture = (style = "") => `<img alt="" src="${DOT}" style="width:200px;height:260px;${style}">`;

/** The ways stores build a tile; each must bear a badge without moving by a hair. */
const TILES: Readonly<Record<string, string>> = {
  positioned: `<div class="tile" style="position:relative;width:200px">${picture("display:block")}<p>Name</p></div>`,
  "picture box": `<div class="tile" style="width:200px"><div style="position:relative;overflow:hidden;border:3px solid">${picture("position:absolute;inset:0")}<div style="padding-top:130%"></div></div><p>Name</p></div>`,
  link: `<a class="tile" href="#away" style="position:relative;display:block;width:200px">${picture()}<span>Name</span></a>`,
  "inline link": `<div class="tile" style="width:200px"><a href="#away" style="position:relative">${picture()}</a></div>`,
  "flex with gaps": `<div class="tile" style="position:relative;display:flex;flex-direction:column;gap:9px;width:200px">${picture()}<b>Name</b></div>`,
  "grid with gaps": `<div class="tile" style="position:relative;display:grid;gap:9px;width:200px">${picture()}<b>Name</b></div>`,
  "last child rule": `<style>.last>*+*{margin-top:40px}.last>:last-child{padding:20px}</style><div class="tile last" style="width:200px"><div style="position:relative">${picture()}</div><p>Name</p></div>`,
  static: `<div class="tile" style="width:200px">${picture()}<p>Name</p></div>`,
  "table cell": `<table class="tile"><tr><td>${picture()}</td></tr></table>`,
  button: `<div class="tile" style="position:relative;width:220px"><button style="position:relative">${picture()}</button></div>`,
  "right to left": `<div class="tile" dir="rtl" style="position:relative;width:200px">${picture()}<p>اسم</p></div>`,
  background: `<div class="tile" style="width:200px"><div class="picture" style="position:relative;height:260px;background:#777"></div></div>`,
  "scrolled box": `<div class="tile" style="position:relative;width:200px;height:300px;overflow:auto"><div style="height:120px"></div>${picture()}</div>`,
};

describe("a badge on a tile", () => {
  it("moves nothing, is big enough and sits on its picture, however the tile is built", async () => {
    const sections = Object.entries(TILES).map(
      ([name, html]) => `<section title="${name}">${html}<p>after</p></section>`,
    );
    const page = await storePage(sections.join(""));
    const look = () =>
      page.evaluate(() => {
        const { scrollWidth, scrollHeight } = document.documentElement;
        const own = [...document.body.querySelectorAll("*")].filter(
          ({ localName }) => localName !== "hueward-view",
        );
        const boxes = own.map((element) => JSON.stringify(element.getBoundingClientRect()));
        return [
          scrollWidth,
          scrollHeight,
          document.body.innerHTML.replaceAll("<hueward-view></hueward-view>", ""),
          boxes,
        ];
      });
    const before = await look();
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    expect(await look()).toEqual(before);
    const shifts = await page.evaluate(() => {
      const seen: unknown[] = [];
      new PerformanceObserver((list) => seen.push(...list.getEntries())).observe({
        type: "layout-shift",
        buffered: true,
      });
      return new Promise((done) => setTimeout(() => done(seen.length), 50));
    });
    expect(shifts).toBe(0);
    for (const name of Object.keys(TILES)) {
      const shown = page.locator(`section[title="${name}"] .picture, section[title="${name}"] img`).first();
      await shown.scrollIntoViewIfNeeded();
      await drawn(page);
      const outer = await shown.boundingBox();
      if (!outer) throw new Error("no box");
      const [x, y] = [outer.x + 20, outer.y + outer.height - 20];
      const found = await page.evaluate(
        ([left = 0, top = 0]) => {
          const host = document.elementFromPoint(left, top);
          const box = host?.shadowRoot
            ?.elementFromPoint(left, top)
            ?.closest("button")
            ?.getBoundingClientRect();
          return [
            host?.localName,
            box?.left ?? 0,
            box?.bottom ?? 0,
            box?.right ?? 0,
            box?.height ?? 0,
          ] as const;
        },
        [x, y],
      );
      const [host, left, bottom, right, height] = found;
      expect([name, host]).toEqual([name, "hueward-view"]);
      expect(left).toBeCloseTo(outer.x + 6, 0);
      expect(bottom).toBeCloseTo(outer.y + outer.height - 6, 0);
      expect(right).toBeLessThanOrEqual(outer.x + outer.width);
      expect(Math.min(right - left, height)).toBeGreaterThanOrEqual(24);
    }
    await page.close();
  });

  it("keeps the cloth and the number where a picture is too narrow for words", async () => {
    const tile = `<div class="tile" style="position:relative;width:80px">${picture("width:80px")}</div>`;
    const page = await storePage(tile);
    await page.evaluate(() => {
      Room.badgeAll({ words: "Goes with many", count: 12 });
    });
    await drawn(page);
    const box = await chip(page).boundingBox();
    expect(box?.width).toBeLessThanOrEqual(68);
    expect(box?.height).toBeGreaterThanOrEqual(24);
    expect(await page.locator("hueward-view >> .words").isVisible()).toBe(false);
    expect(await page.locator("hueward-view >> .count").textContent()).toBe("12");
    expect(await chip(page).getAttribute("aria-label")).toBe(
      "Goes with many. crimson and cream. Striped boat-neck shirt",
    );
    await page.close();
  });

  it("follows its picture in a scrolling list of unpositioned tiles, and hides where the list cuts it off", async () => {
    const tile = `<div class="tile" style="flex:none;width:200px">${picture()}</div>`;
    const page = await storePage(
      `<div id="list" style="display:flex;width:420px;overflow-x:auto">${tile.repeat(4)}</div>`,
    );
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    const shown = () =>
      page.evaluate(() =>
        [...document.querySelectorAll("hueward-view")].map((host) =>
          Math.round(host.shadowRoot?.querySelector("button")?.getBoundingClientRect().left ?? -1),
        ),
      );
    expect(await shown()).toEqual([14, 214, 0, 0]);
    await page.evaluate(() => {
      const list = document.querySelector("#list");
      if (list) list.scrollLeft = 400;
    });
    await drawn(page);
    // The list ends at its last tile: 4 × 200 px less its own 420 px.
    expect(await shown()).toEqual([0, 0, 34, 234]);
    await page.close();
  });

  it("is gone with all it hung on the page when the visit ends", async () => {
    const page = await storePage(Object.values(TILES).join(""));
    const before = await page.evaluate(() => document.documentElement.outerHTML);
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    expect(await page.locator("hueward-view").count()).toBe(Object.keys(TILES).length);
    await page.evaluate(() => Room.stop());
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(before);
    await page.close();
  });
});

describe("what a page can do to a badge", () => {
  it("cannot look into it", async () => {
    const page = await storePage(TILES.positioned ?? "", { open: false });
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    expect(
      await page.evaluate(() => {
        const host = document.querySelector("hueward-view");
        return [host?.shadowRoot, host?.textContent, host?.outerHTML];
      }),
    ).toEqual([null, "", "<hueward-view></hueward-view>"]);
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
      hueward-view { position: static !important; display: none !important; opacity: 0 !important; visibility: hidden !important;
        --ink: red !important; --paper: red !important; transform: scale(3) !important; font-size: 40px !important; }
      .tile { direction: rtl; color: lime; } .tile > * { position: relative !important; left: 50px !important; }
      button, span { color: lime !important; background: red !important; padding: 40px !important; }`;
    // The hostile page also moves its own picture: by layout, so take that rule for both.
    expect(await look(`.tile > img { position: relative; left: 50px } ${hostile}`)).toEqual(
      await look(".tile > img { position: relative; left: 50px }"),
    );
  });

  it("cannot keep it from being drawn by the strictest policy", async () => {
    const page = await storePage(TILES.positioned ?? "", {
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
      [...document.querySelectorAll("hueward-view")].map((host) => {
        const inner = host.shadowRoot?.querySelector(".chip,.card");
        const part = host.shadowRoot?.querySelector(".part");
        return [inner, part].map((element) => element && getComputedStyle(element).backgroundColor);
      }),
    );
    expect(colors).toEqual(Array(2).fill(["rgb(250, 250, 248)", "oklab(0.5 0.17 0.08)"]));
    expect(errors.filter((error) => !error.includes("style-src"))).toEqual([]);
    await page.close();
  });

  it("cannot press it", async () => {
    const page = await storePage(TILES.positioned ?? "");
    const pressed = await page.evaluate(() => {
      Room.badgeAll();
      const host = document.querySelector<HTMLElement>("hueward-view");
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
    const page = await storePage(TILES.link ?? "");
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

describe("reading a badge", () => {
  /** Contrast ratio of WCAG 2.2 (relative luminance and 1.4.3) of two "rgb(r, g, b)" colours. */
  const contrast = (a: string, b: string) => {
    const luminance = (css: string) => {
      const [r = 0, g = 0, blue = 0] = (css.match(/\d+/g) ?? []).map((part) => {
        const value = Number(part) / 255;
        return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * blue;
    };
    const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
    return (light + 0.05) / (dark + 0.05);
  };

  for (const dark of [false, true]) {
    it(`is possible over any picture, ${dark ? "dark" : "light"}`, async () => {
      const page = await storePage(TILES.positioned ?? "", { dark });
      await page.evaluate(() => {
        Room.badgeAll();
      });
      await drawn(page);
      const [ink = "", paper = "", border = ""] = await chip(page).evaluate((button) => {
        const { color, backgroundColor, borderTopColor } = getComputedStyle(button);
        return [color, backgroundColor, borderTopColor];
      });
      expect(paper).toMatch(/^rgb\(/); // opaque
      expect(contrast(ink, paper)).toBeGreaterThanOrEqual(4.5);
      // Some edge of the badge stands out 3:1 whatever lies under it: paper or hairline.
      for (let grey = 0; grey <= 255; grey += 5) {
        const under = `rgb(${grey}, ${grey}, ${grey})`;
        expect(
          Math.max(contrast(paper, under), contrast(border, under), contrast(border, paper)),
        ).toBeGreaterThanOrEqual(3);
      }
      await page.close();
    });
  }
});
