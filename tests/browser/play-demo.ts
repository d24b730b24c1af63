import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { swatchLine } from "../commands/swatch-line.ts";
import type { Store } from "../store/start-store.ts";
import { hiddenParts } from "./hidden-parts.ts";
import type { ExtensionBrowser, Popup } from "./open-extension.ts";
import { type ScannedPage, scanPage } from "./scan-page.ts";

/** Longest wait for one page to be read; ms. */
const READ_WAIT_MS = 60_000;

/** Pieces named in a row of the table. */
const PIECES_NAMED = 4;

const say = (line: string) => process.stdout.write(`${line}\n`);

const cell = (text: string, width: number) => text.slice(0, width).padEnd(width);

/** What the extension says of each product, a row a product. */
function printTable(title: string, { summary, verdicts }: ScannedPage): void {
  say(`\n${title}: ${summary.kind}, ${summary.products.length} products`);
  say([cell("product", 32), cell("colour", 30), cell("verdict", 36), "pieces"].join("  "));
  for (const { candidate } of summary.products) {
    const [first] = candidate.palette.swatches;
    const color = first
      ? `${swatchLine(first).name} ${swatchLine(first).hex}`
      : (candidate.palette.reason ?? "unread");
    const explained = verdicts.get(candidate.key);
    const pieces = (explained?.verdict.pieces ?? [])
      .slice(0, PIECES_NAMED)
      .map(({ pieceId, relation }) => `${explained?.pieces[pieceId]?.name ?? pieceId} (${relation})`);
    const headline = explained?.verdict.headline ?? "";
    say([cell(candidate.title, 32), cell(color, 30), cell(headline, 36), pieces.join(", ")].join("  "));
  }
}

async function shoot(screen: Pick<Page | Popup, "screenshot">, file: string): Promise<void> {
  writeFileSync(file, await screen.screenshot());
  say(`saved ${file}`);
}

/** Closes what tells of the import, as a person does who has read it, and goes back to the top with nothing pointed at. */
async function closeToasts(closetPage: Page): Promise<void> {
  const close = closetPage.locator(".toast").getByRole("button", { name: "Close" });
  while (await close.count()) await close.first().click();
  await closetPage.mouse.move(0, 0);
  await closetPage.evaluate("scrollTo(0, 0)");
}

/** The flow as a person meets it: popup, switch on, badges, one card, closet, wishlist; with pictures of every step. */
async function walkThrough(
  extension: ExtensionBrowser,
  closetPage: Page,
  store: Store,
  folder: string,
): Promise<void> {
  const at = (name: string) => join(folder, `${name}.png`);
  await extension.approve([store.shopUrl, store.cdnUrl].map((url) => url.replace(/:\d+$/, "")));
  const shop = await extension.context.newPage();
  await shop.goto(store.shopUrl);
  const popup = await extension.clickAction(shop);
  await popup.waitFor("document.querySelector('.switch-on')");
  await shoot(popup, at("1-popup-before"));
  await popup.click("button", "Switch on");
  await popup.waitFor("document.querySelectorAll('.row').length >= 8");
  await shoot(popup, at("2-popup-page"));
  await popup.close();
  await shop.bringToFront();
  await shoot(shop, at("3-store-badges"));
  const hidden = await hiddenParts(shop);
  const badge = (await hidden.buttons()).find(({ text }) => /Finishes|set/i.test(text));
  if (badge) {
    await hidden.click(badge);
    await shop.waitForTimeout(500);
    await shoot(shop, at("4-store-card"));
    const wish = (await hidden.buttons()).find(({ text }) => text === "Save to wishlist");
    if (wish) await hidden.click(wish);
  }
  await closeToasts(closetPage);
  for (const scheme of ["light", "dark"] as const) {
    await closetPage.emulateMedia({ colorScheme: scheme });
    await closetPage.bringToFront();
    await shoot(closetPage, at(`5-closet-${scheme}`));
  }
  await closetPage.emulateMedia({ colorScheme: "light" });
  await closetPage.getByRole("link", { name: /Wishlist/ }).click();
  await closetPage.locator(".wish-headline").first().waitFor();
  await shoot(closetPage, at("6-wishlist"));
  await shop.close();
}

/** Plays the whole flow without a person: prints what is said of each product, saves a picture of each screen. */
export async function playDemo(
  extension: ExtensionBrowser,
  closetPage: Page,
  store: Store,
  folder: string,
): Promise<void> {
  await walkThrough(extension, closetPage, store, folder);
  for (const path of ["/", "/bare", "/journal"]) {
    printTable(path, await scanPage(extension, closetPage, `${store.shopUrl}${path}`, READ_WAIT_MS));
  }
}
