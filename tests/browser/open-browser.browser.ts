import { expect, it } from "vitest";
import { bundle } from "./bundle.ts";
import { openBrowser } from "./open-browser.ts";

it("runs a bundled module of ours in a real browser", async () => {
  const code = await bundle(new URL("../../lib/words/slot.ts", import.meta.url).pathname, "Words");
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ content: code });
    expect(await page.evaluate("Words.SLOTS.length")).toBe(10);
  } finally {
    await browser.close();
  }
});
