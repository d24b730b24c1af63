import { describe, expect, it } from "vitest";
import type * as RoomModule from "./badge-room.ts";
import { chip, drawn, HOST, storePage } from "./store-page.ts";
import { picture, TILES } from "./tiles.ts";

declare const Room: typeof RoomModule;

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
          (element) => !element.matches("span[hidden]"),
        );
        const boxes = own.map((element) => JSON.stringify(element.getBoundingClientRect()));
        return [
          scrollWidth,
          scrollHeight,
          document.body.innerHTML.replaceAll('<span hidden=""></span>', ""),
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
      expect([name, host]).toEqual([name, "span"]);
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
    expect(await page.locator(".words").isVisible()).toBe(false);
    expect(await page.locator(".count").textContent()).toBe("12");
    const name = "Goes with many. crimson and cream. Striped boat-neck shirt";
    expect(await page.getByRole("button", { name, exact: true }).count()).toBe(1);
    await page.close();
  });

  it("shows all of its words on two tiles side by side on the narrowest phone", async () => {
    const tile = `<div class="tile" style="position:relative;width:138px">${picture("width:138px")}</div>`;
    const page = await storePage(tile, { width: 320 });
    await page.evaluate(() => {
      Room.badgeAll({ words: "A set with your striped scarf", count: 1 });
    });
    await drawn(page);
    const words = page.locator(".words");
    expect(await words.evaluate(({ scrollHeight, clientHeight }) => scrollHeight - clientHeight)).toBe(0);
    const [inner, outer] = [await words.boundingBox(), await chip(page).boundingBox()];
    if (!inner || !outer) throw new Error("no box");
    expect(inner.y).toBeGreaterThan(outer.y);
    expect(inner.y + inner.height).toBeLessThan(outer.y + outer.height);
    await page.close();
  });

  it("has one size on a picture whatever it says, since a page can measure it", async () => {
    const models = [
      { words: "You own this red", count: 1, state: "ready" },
      { words: "Nearly a set with your tangerine clutch of soft leather", count: 2, state: "ready" },
      { words: "Goes with many", count: 128, state: "ready" },
      { words: "Reading the picture", count: 0, cloth: [], state: "reading" },
      { words: "Can't read this picture", count: 0, cloth: [], state: "unreadable" },
    ] as const;
    for (const width of [80, 130, 240]) {
      const sizes: string[] = [];
      for (const model of models) {
        const shown = picture(`width:${width}px`);
        const page = await storePage(
          `<div class="tile" style="position:relative;width:${width}px">${shown}</div>`,
        );
        await page.evaluate((given) => void Room.badgeAll(given), model);
        await drawn(page);
        const box = await chip(page).boundingBox();
        sizes.push(`${box?.width} × ${box?.height}`);
        await page.close();
      }
      expect(sizes).toEqual(models.map(() => `${Math.min(width - 12, width < 112 ? 64 : 176)} × 40`));
    }
  });

  // The window of these tests is 600 px high.
  for (const position of ["relative", "static"]) {
    it(`is seen on a product's picture that runs past the first screen, and stays there (${position})`, async () => {
      const large = picture("display:block;width:600px;height:900px");
      const heart = `<button style="position:absolute;left:0;top:320px;width:90px;height:60px">like</button>`;
      const page = await storePage(
        `<style>body{margin:0;padding-top:220px}</style>
        <div class="tile" style="width:600px"><div style="position:${position}">${large}${position === "relative" ? heart : ""}</div></div>
        <div style="height:2000px"></div>`,
      );
      await page.evaluate(() => {
        // It may come when a person is on the way already.
        scrollTo(0, 80);
        Room.badgeAll();
      });
      await drawn(page);
      const place = async () => {
        const [shown, box] = [await page.locator("img").boundingBox(), await chip(page).boundingBox()];
        return [(box?.x ?? 0) - (shown?.x ?? 0), (box?.y ?? 0) + (box?.height ?? 0) - (shown?.y ?? 0)];
      };
      // 600 px less the 220 px above the picture, less the inset of 6 px; beside the heart, if there is one.
      const first = [position === "relative" ? 96 : 6, 374];
      expect(await place()).toEqual(first);
      const settled = async (change: Promise<unknown>) => {
        await change;
        await drawn(page);
        return place();
      };
      expect(await settled(page.evaluate(() => scrollTo(0, 150)))).toEqual(first);
      expect(await settled(page.setViewportSize({ width: 800, height: 544 }))).toEqual(first);
      expect(await settled(page.evaluate(() => scrollTo(0, 500)))).toEqual(first);
      expect(await settled(page.evaluate(() => scrollTo(0, 0)))).toEqual(first);
      await page.close();
    });
  }

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
        [...document.querySelectorAll("span[hidden]")].map((host) =>
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

  it("is seen in an open dialog, on a picture that a list in it scrolls", async () => {
    const page = await storePage(
      `<dialog><div id="list" style="height:400px;overflow:auto"><div style="height:300px"></div>
      <div class="tile" style="width:200px">${picture()}</div></div></dialog>`,
    );
    await page.evaluate(() => {
      document.querySelector("dialog")?.showModal();
      Room.badgeAll();
      document.querySelector("#list")?.scrollTo(0, 150);
    });
    await drawn(page);
    const shown = await page.locator("img").boundingBox();
    const box = await chip(page).boundingBox();
    expect(box?.x).toBeCloseTo((shown?.x ?? 0) + 6, 0);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeCloseTo((shown?.y ?? 0) + (shown?.height ?? 0) - 6, 0);
    await chip(page).click();
    expect(await page.evaluate(() => Room.pressed)).toEqual(["badge"]);
    await page.close();
  });

  it("is not hung at all where a page's rules notice it wherever it hangs", async () => {
    const page = await storePage(
      `<style>body:last-child .tile{margin-left:8px}</style><div class="tile" style="width:200px">${picture()}</div>`,
    );
    const left = () => page.locator("img").evaluate((shown) => shown.getBoundingClientRect().left);
    expect(await left()).toBe(16);
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    expect([await left(), await page.locator(HOST).count()]).toEqual([16, 0]);
    await page.close();
  });

  it("sits on a tile that is a form with fields of any name", async () => {
    const fields = ["offsetParent", "parentElement", "parentNode"].map((name) => `<input name="${name}">`);
    const page = await storePage(
      `<form class="tile" style="position:relative;width:200px">${picture("display:block")}${fields.join("")}</form>`,
    );
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    const [shown, box] = [await page.locator("img").boundingBox(), await chip(page).boundingBox()];
    expect(box?.x).toBeCloseTo((shown?.x ?? 0) + 6, 0);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeCloseTo((shown?.y ?? 0) + (shown?.height ?? 0) - 6, 0);
    await page.close();
  });

  /** A tile with a link stretched over all of it, and much to look at beside the picture. */
  const stretched = (last = "") =>
    `<div class="tile" style="position:relative;width:200px"><div style="position:relative">${picture("display:block")}</div>
    <a href="#a" style="position:absolute;inset:0;z-index:2"></a>${"<p>bit</p>".repeat(60)}${last}</div>`;
  const STYLE = "<style>p{margin:0;font-size:2px}.last:last-child{opacity:.5}</style>";

  it("is over what its product stretches over all of it, however many there are", async () => {
    const page = await storePage(
      `${STYLE}<div style="display:grid;grid-template-columns:repeat(12,1fr)">${stretched().repeat(48)}</div>`,
      { width: 2600 },
    );
    await page.setViewportSize({ width: 2600, height: 2000 });
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    const over = await page.locator(HOST).evaluateAll((hosts) =>
      hosts.filter((host) => {
        const box = host.shadowRoot?.querySelector("button")?.getBoundingClientRect() ?? new DOMRect();
        return document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2) === host;
      }),
    );
    expect(over).toHaveLength(48);
    await page.close();
  });

  it("is in no layer of its own where a page's rules notice that it rose", async () => {
    const page = await storePage(STYLE + stretched(`<p class="last">last</p>`));
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    const opacity = () => page.locator(".last").evaluate((last) => getComputedStyle(last).opacity);
    expect([await opacity(), await page.locator(HOST).count()]).toEqual(["0.5", 1]);
    expect(await page.locator(HOST).evaluate((host) => getComputedStyle(host).zIndex)).toBe("auto");
    await page.close();
  });

  it("is gone with all it hung on the page when the visit ends", async () => {
    const page = await storePage(Object.values(TILES).join(""));
    const before = await page.evaluate(() => document.documentElement.outerHTML);
    await page.evaluate(() => {
      Room.badgeAll();
    });
    await drawn(page);
    expect(await page.locator(HOST).count()).toBe(Object.keys(TILES).length);
    await page.evaluate(() => Room.stop());
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(before);
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
      const page = await storePage(TILES.positioned, { dark });
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
      // The hairline marks the badge off where the picture is as light or as dark as its paper.
      expect(contrast(border, paper)).toBeGreaterThanOrEqual(3);
      await page.close();
    });
  }
});
