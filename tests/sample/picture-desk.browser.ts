import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../browser/open-browser.ts";
import { apart } from "./color-distance.ts";
import { openPictureDesk, type PictureDesk } from "./picture-desk.ts";

/** CIEDE2000 that compression and scaling may add. */
const NEAR = 3;

let desk: PictureDesk;
const files = new Map<string, Uint8Array>();

/** A red box on white, 300 × 400, encoded by Chromium itself. */
const ENCODE = `(async () => {
  const canvas = Object.assign(document.createElement("canvas"), { width: 300, height: 400 });
  const context = canvas.getContext("2d");
  const files = {};
  for (const [name, type, ground] of [["jpeg", "image/jpeg", 1], ["png", "image/png", 1], ["webp", "image/webp", 1], ["cut-out", "image/png", 0]]) {
    context.clearRect(0, 0, 300, 400);
    context.fillStyle = "#f4f4f4";
    if (ground) context.fillRect(0, 0, 300, 400);
    context.fillStyle = "rgb(176 32 44)";
    context.fillRect(80, 90, 140, 220);
    const blob = await new Promise((done) => canvas.toBlob(done, type, 0.9));
    files[name] = Array.from(new Uint8Array(await blob.arrayBuffer()));
  }
  return files;
})()`;

beforeAll(async () => {
  const browser = await openBrowser();
  const page = await browser.newPage();
  for (const [name, bytes] of Object.entries((await page.evaluate(ENCODE)) as Record<string, number[]>)) {
    files.set(name, Uint8Array.from(bytes));
  }
  await browser.close();
  desk = await openPictureDesk();
});
afterAll(() => desk.close());

describe("a picture file decoded by a real browser", () => {
  it.each(["jpeg", "png", "webp", "cut-out"])("as %s gives the colour that was drawn", async (name) => {
    const { palette, ms } = await desk.sample(files.get(name) ?? new Uint8Array());
    const [first] = palette.swatches;
    expect(palette.swatches).toHaveLength(1);
    expect(first && apart(first.oklab, [176, 32, 44])).toBeLessThan(NEAR);
    expect(ms).toBeGreaterThanOrEqual(0);
  });

  it("passes the slot and the words on", async () => {
    const { palette } = await desk.sample(files.get("png") ?? new Uint8Array(), {
      slot: "bag",
      text: "Red bag",
    });
    expect(palette.evidence).toContain("words");
  });

  it("gives the medians of its boxes at its own size", async () => {
    const [inside, outside] = await desk.medians(files.get("png") ?? new Uint8Array(), [
      [40, 40, 60, 60],
      [0, 0, 10, 10],
    ]);
    expect(inside).toEqual([176, 32, 44]);
    expect(outside).toEqual([244, 244, 244]);
  });

  it("that is no picture is refused in a plain sentence", async () => {
    await expect(desk.sample(Uint8Array.from([1, 2, 3]))).rejects.toThrow(
      "The browser cannot read this picture.",
    );
  });
});
