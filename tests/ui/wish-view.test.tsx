// @vitest-environment happy-dom
import { afterEach, expect, it } from "vitest";
import { threeWishes, twelvePieces } from "./example-pieces.ts";
import { exampleTools, NOON } from "./example-tools.ts";
import { memoryCloset } from "./memory-closet.ts";
import { type MountedPage, mountPage } from "./mount-page.tsx";

let page: MountedPage | null = null;
const open = async (pieces = twelvePieces(), wishes = threeWishes()) => {
  const closet = memoryCloset({ pieces, wishes });
  page = await mountPage(closet);
  await page.go("#wishlist");
  return { closet, ...page };
};

afterEach(() => page?.unmount());

it("shows price, store and what each would do for the closet today", async () => {
  const { text, button } = await open();
  expect(text()).toContain("3 wishes");
  expect(text()).toMatch(/89[.,]50/);
  expect(text()).toContain("Its picture could not be loaded.");
  const cards = [...document.querySelectorAll(".wish-card")];
  expect(cards.map((card) => card.querySelector(".wish-headline")?.textContent ?? "")).not.toContain("");
  expect(cards[0]?.querySelectorAll(".relation-row").length).toBeGreaterThan(0);
  const link = button("Store page of Ribbed cardigan");
  expect(link.getAttribute("rel")).toBe("noopener noreferrer");
  expect(link.getAttribute("href")).toBe("https://shop.localhost/cardigan");
});

it("moves a wish to the closet, and back", async () => {
  const { closet, click } = await open();
  const wishes = await closet.wishes();
  const pieces = await closet.pieces();
  await click("I own this now: Ribbed cardigan");
  expect((await closet.wishes()).map(({ title }) => title)).not.toContain(
    "Ribbed cardigan with horn buttons",
  );
  expect((await closet.pieces())[0]).toMatchObject({
    name: "Ribbed cardigan with horn buttons",
    slot: "layer",
    productKey: "https://shop.localhost/cardigan",
    addedAt: NOON,
  });
  await click("Undo");
  expect(await closet.wishes()).toEqual(wishes);
  expect(await closet.pieces()).toEqual(pieces);
});

it("asks for slot and colours where the store page did not tell them", async () => {
  const { closet, click, choose } = await open();
  await click("I own this now: Drop of the week");
  expect(await closet.wishes()).toHaveLength(3);
  await choose("Worn as", "bag");
  await click("mustard");
  await click("Put it in the closet");
  expect(await closet.wishes()).toHaveLength(2);
  expect((await closet.pieces())[0]).toMatchObject({ name: "Drop of the week", slot: "bag" });
});

it("removes a wish, and undo brings it back", async () => {
  const { closet, click } = await open();
  const before = await closet.wishes();
  await click("Remove Bias-cut midi skirt");
  expect(await closet.wishes()).toHaveLength(2);
  await click("Undo");
  expect(await closet.wishes()).toEqual(before);
});

it("says when the wishes cannot be compared, and compares again on request", async () => {
  const closet = memoryCloset({ pieces: twelvePieces(), wishes: threeWishes() });
  const { ask } = exampleTools(closet);
  let asked = 0;
  page = await mountPage(closet, async (name, request) => {
    asked += 1;
    if (asked === 1) throw new Error("Hueward did not answer.");
    return ask(name, request);
  });
  await page.go("#wishlist");
  expect(page.text()).toContain("The wishes could not be compared with your closet. Hueward did not answer.");
  await page.click("Compare again");
  expect(page.text()).not.toContain("could not be compared");
  expect(document.querySelectorAll(".wish-headline")).toHaveLength(3);
});

it("says how to fill an empty wishlist", async () => {
  const { text } = await open(twelvePieces(), []);
  expect(text()).toContain("Nothing on the wishlist yet");
  expect(text()).toContain("Save to wishlist");
});
