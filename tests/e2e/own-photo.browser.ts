import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Oklab } from "../../lib/color/oklab.ts";
import { type ExtensionBrowser, openExtension } from "../browser/open-extension.ts";
import { pngOf } from "../pixels/png-of.ts";
import { apart, oklabOf } from "../sample/color-distance.ts";
import { box, everywhere, folds, lit, type Paint, painted, shirt } from "../sample/painted.ts";
import { until } from "./store-visit.ts";

const WIDTH = 600;
const HEIGHT = 800;
const TEAL: Paint = [58, 116, 128];
/** The middle of the white card and of a lamp that blinds the camera, 0–1 across and down. */
const CARD = { x: 0.82, y: 0.14 };
const LAMP = { x: 0.1, y: 0.05 };

/** What a warm lamp does to linear red, green and blue in a photo exposed so that greys stay as light as they are. */
const WARM: Paint = [1.28, 0.96, 0.54];
const warm = ([r, g, b]: Paint): Paint =>
  [r, g, b].map(
    (value, channel) => 255 * ((value / 255) ** 2.2 * (WARM[channel] ?? 1)) ** (1 / 2.2),
  ) as unknown as Paint;

/** A shirt on a wooden table by lamp light, a white card beside it. */
function photo(): Buffer {
  const data = painted(
    [
      everywhere(warm([150, 120, 95])),
      lit(shirt(warm(TEAL)), folds),
      box(CARD.x - 0.06, CARD.y - 0.04, CARD.x + 0.06, CARD.y + 0.04, warm([200, 200, 200])),
      box(0, 0, 2 * LAMP.x, 2 * LAMP.y, [255, 255, 255]),
    ],
    { width: WIDTH, height: HEIGHT, noise: 4 },
  );
  const at = (i: number) => data[i] ?? 0;
  return pngOf(WIDTH, HEIGHT, (x, y) => {
    const i = 4 * (y * WIDTH + x);
    return [at(i), at(i + 1), at(i + 2), at(i + 3)];
  });
}

let extension: ExtensionBrowser;
let page: Page;
const files = [{ name: "linen_shirt.png", mimeType: "image/png", buffer: photo() }];

beforeAll(async () => {
  extension = await openExtension();
  page = await extension.openPage("closet.html");
});
afterAll(() => extension?.close());

/** CIEDE2000 between the first swatch of the photo (or a piece of that closet) and the shirt. */
async function off(within = ".photo-draft"): Promise<number> {
  const css = await page.locator(`${within} .cloth-part`).first().getAttribute("style");
  const [l = 0, a = 0, b = 0] = (css?.match(/oklab\(([^)]+)\)/)?.[1] ?? "").split(" ").map(Number);
  return apart([l, a, b] satisfies Oklab, TEAL);
}

/** CIEDE2000 between the middle of the small picture and the shirt. */
async function pictureOff(picture: string): Promise<number> {
  const pixel = await page.locator(picture).evaluate((element) => {
    const canvas = Object.assign(document.createElement("canvas"), { width: 1, height: 1 });
    const image = element as HTMLImageElement;
    const { naturalWidth, naturalHeight } = image;
    const context = canvas.getContext("2d");
    context?.drawImage(
      image,
      naturalWidth * 0.46,
      naturalHeight * 0.5,
      naturalWidth * 0.08,
      naturalHeight * 0.08,
      0,
      0,
      1,
      1,
    );
    return [...(context?.getImageData(0, 0, 1, 1).data ?? [])];
  });
  const [r = 0, g = 0, b = 0] = pixel;
  return apart(oklabOf([r, g, b]), TEAL);
}

async function clickPicture({ x, y }: { x: number; y: number }): Promise<void> {
  const pad = page.getByRole("slider");
  await pad.evaluate((element) => element.scrollIntoView({ block: "center" }));
  const drawn = await pad.boundingBox();
  if (!drawn) throw new Error("There is no picture to point at.");
  await page.mouse.move(drawn.x + drawn.width / 2, drawn.y + drawn.height / 2);
  await page.mouse.move(drawn.x + x * drawn.width, drawn.y + y * drawn.height, { steps: 4 });
  await page.mouse.down();
  await page.mouse.up();
}

const pointer = () => page.locator(".light-pointer");
const opener = () => page.getByRole("button", { name: "Point at something white or grey" });
const back = () => page.getByRole("button", { name: "As photographed" });

/** CIEDE2000. What shading, noise and 8 bits leave after the light was put right. */
const NEAR = 4;
/** CIEDE2000. What the lamp does to the shirt. */
const FAR = 10;

describe("a photo of one's own by lamp light", () => {
  it("is read as it is until something white is pointed at", async () => {
    await page.getByRole("button", { name: "Add from photos" }).first().click();
    await page.locator('.photo-form input[type="file"]').setInputFiles(files);
    await page.locator(".photo-draft .cloth-part").first().waitFor();
    expect(await off()).toBeGreaterThan(FAR);
    expect(await pictureOff(".photo-picture")).toBeGreaterThan(FAR);
    expect(await back().count()).toBe(0);
  });

  it("comes right by keyboard alone", async () => {
    await opener().focus();
    await page.keyboard.press("Enter");
    await page.locator(".light-pad img").waitFor();
    await until("the picture's shape", async () =>
      (await page.locator(".light-pad").getAttribute("style"))?.includes("0.75"),
    );
    for (let press = 0; press < 4; press++) await page.keyboard.press("Shift+ArrowRight");
    for (let press = 0; press < 6; press++) await page.keyboard.press("Shift+ArrowUp");
    expect(await page.getByRole("slider").getAttribute("aria-valuetext")).toBe(
      "82 % from the left, 14 % from the top",
    );
    await page.keyboard.press("Enter");
    await back().waitFor();
    expect(await off()).toBeLessThan(NEAR);
    expect(await pictureOff(".photo-picture")).toBeLessThan(NEAR);
    expect(await page.evaluate("document.activeElement.textContent")).toBe(
      "Point at something white or grey",
    );
  });

  it("is taken back, and Escape leaves the pointing but not the dialog", async () => {
    await back().click();
    expect(await off()).toBeGreaterThan(FAR);
    await opener().click();
    await pointer().waitFor();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Escape");
    await pointer().waitFor({ state: "detached" });
    // A second time, without a click between: a browser lets a page refuse that only once.
    await page.keyboard.press("Enter");
    await pointer().waitFor();
    await page.keyboard.press("Escape");
    await pointer().waitFor({ state: "detached" });
    expect(await page.locator("dialog[open]").count()).toBe(1);
    expect(await off()).toBeGreaterThan(FAR);
  });

  it("is left as it is, and says why, where the camera was blinded", async () => {
    await opener().click();
    await clickPicture(LAMP);
    await pointer().getByRole("alert").filter({ hasText: "the camera lost its colour" }).waitFor();
    expect(await off()).toBeGreaterThan(FAR);
  });

  it("comes right by mouse, in a narrow window too, and stays right in the closet", async () => {
    await page.setViewportSize({ width: 400, height: 700 });
    await clickPicture(CARD);
    await back().waitFor();
    expect(await off()).toBeLessThan(NEAR);
    await page.getByLabel("Worn as").selectOption("top");
    await page.getByRole("button", { name: "Put 1 piece in the closet" }).click();
    await page.locator(".piece-card").waitFor();
    await page.reload();
    await page.locator(".piece-card").waitFor();
    expect(await off(".piece-card")).toBeLessThan(NEAR);
    expect(await pictureOff(".piece-card img")).toBeLessThan(NEAR);
  });
});
