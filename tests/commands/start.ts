// `npm start`: the extension in a real browser, with the invented store and a demo closet. Without a display it plays
// the same flow by itself, prints what it says of each product and saves pictures of every screen.
import { mkdirSync } from "node:fs";
import { buildExtension } from "../browser/build-extension.ts";
import { ensureChromium } from "../browser/ensure-chromium.ts";
import { importCloset } from "../browser/import-closet.ts";
import { openExtension } from "../browser/open-extension.ts";
import { playDemo } from "../browser/play-demo.ts";
import { startStore } from "../store/start-store.ts";

const DEMO_CLOSET = "tests/store/demo-closet.json";
const PICTURES = ".output/demo";

const say = (line: string) => process.stderr.write(`${line}\n`);

function hasDisplay(): boolean {
  if (process.env.CI) return false;
  if (process.platform !== "linux") return true;
  return Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY);
}

async function main(): Promise<void> {
  ensureChromium();
  say("Building the extension.");
  buildExtension();
  say("Opening the invented store; its pictures are drawn the first time, about half a minute.");
  const store = await startStore();
  const display = hasDisplay();
  const extension = await openExtension({ headless: !display });
  try {
    const closetPage = await extension.openPage("closet.html");
    await importCloset(closetPage, DEMO_CLOSET);
    if (display) {
      const shop = await extension.context.newPage();
      await shop.goto(store.shopUrl);
      say("Press Hueward's button in the toolbar, then switch the store on. Close the browser to end.");
      await new Promise<void>((closed) => extension.context.once("close", () => closed()));
    } else {
      mkdirSync(PICTURES, { recursive: true });
      await playDemo(extension, closetPage, store, PICTURES);
    }
  } finally {
    await extension.close();
    await store.close();
  }
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
  process.exitCode = 1;
});
