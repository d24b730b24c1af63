// @vitest-environment happy-dom
import { afterEach, expect, it } from "vitest";
import type { Closet } from "../../lib/closet/closet.ts";
import { CLOTH_COLORS, type ClothColor } from "../../lib/closet/cloth-colors.ts";
import type { Piece, Wish } from "../../lib/closet/piece.ts";
import type { Slot } from "../../lib/words/slot.ts";
import { memoryCloset } from "./memory-closet.ts";
import { type MountedPage, mountPage } from "./mount-page.tsx";

const piece = (name: string, slot: Slot, color: ClothColor): Piece => ({
  id: name,
  name,
  slot,
  swatches: [{ oklab: CLOTH_COLORS[color], share: 1 }],
  addedAt: 1,
});
const PIECES = [piece("Red skirt", "bottom", "red"), piece("Olive shirt", "top", "olive")];
const WISH: Wish = {
  id: "w",
  title: "Olive coat",
  slot: "layer",
  palette: { swatches: [{ oklab: CLOTH_COLORS.olive, share: 1 }], confidence: 0.9, evidence: ["pixels"] },
  price: null,
  link: null,
  store: "shop.example",
  savedAt: 1,
};

let page: MountedPage | null = null;
const open = async (closet: Closet) => {
  page = await mountPage(closet);
  return page;
};
afterEach(() => page?.unmount());

const AS_MOST = "No need";
const DEUTAN = "Reds look bright to me";
const chosen = () => document.querySelector(".eyes-choice input:checked")?.closest("label")?.textContent;
const rows = (selector: string) =>
  [...document.querySelectorAll(selector)]
    .filter((row) => row.textContent?.includes("may look alike to you"))
    .map((row) => row.textContent);

it("tells which of two own pieces look alike, once a person has said how they see", async () => {
  const closet = memoryCloset({ pieces: PIECES });
  const { click, text } = await open(closet);
  expect(chosen()).toContain(AS_MOST);
  await click("Red skirt");
  expect(rows(".kin-row")).toEqual([]);
  await click(DEUTAN);
  expect(await closet.vision()).toBe("deutan");
  expect(chosen()).toContain("(deutan)");
  expect(text()).toContain("From now on you are told where two colours may look alike to you.");
  expect(rows(".kin-row")).toHaveLength(1);
  expect(rows(".kin-row")[0]).toContain("Olive shirt");
  await click(AS_MOST);
  expect(await closet.vision()).toBeNull();
  expect(rows(".kin-row")).toEqual([]);
});

it("tells it of the pieces that a wish goes with", async () => {
  const closet = memoryCloset({ pieces: PIECES, wishes: [WISH] });
  const { click, go } = await open(closet);
  await go("#wishlist");
  expect(rows(".relation-row")).toEqual([]);
  await click(DEUTAN);
  expect(rows(".relation-row")).toHaveLength(1);
  expect(rows(".relation-row")[0]).toContain("Red skirt");
});

it("shows what another page has stored", async () => {
  const closet = memoryCloset({ pieces: PIECES });
  const { settle } = await open(closet);
  await settle(() => void closet.putVision("tritan"));
  expect(chosen()).toContain("(tritan)");
});

it("goes back to what is stored where the answer could not be kept, and says so", async () => {
  const closet: Closet = {
    ...memoryCloset({ pieces: PIECES }),
    putVision: () => Promise.reject(new Error("The disk is full.")),
  };
  const { click, text } = await open(closet);
  await click(DEUTAN);
  expect(text()).toContain("Nothing was changed. The disk is full.");
  expect(chosen()).toContain(AS_MOST);
});

it("keeps the answer out of the closet file", async () => {
  const closet = memoryCloset({ pieces: PIECES });
  await closet.putVision("deutan");
  const { click, saved } = await open(closet);
  await click("Export the closet");
  const [file] = saved.values();
  expect(file).toContain("Olive shirt");
  expect(file).not.toContain("deutan");
});
