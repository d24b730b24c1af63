// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from "vitest";
import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import { spotUnder, steppedSpot } from "../../lib/ui/closet-page/spot-steps.ts";
import { NAVY_DOT } from "./example-tools.ts";
import { memoryCloset } from "./memory-closet.ts";
import { type MountedPage, mountPage } from "./mount-page.tsx";

let page: MountedPage;
afterEach(() => page?.unmount());

const POINT = "Point at something white or grey";
const picture = (name: string) => new File(["x"], name, { type: "image/jpeg" });

const one = <T extends Element>(selector: string): T => {
  const found = document.querySelector<T>(selector);
  if (!found) throw new Error(`Nothing matches ${selector}.`);
  return found;
};
const pad = () => one<HTMLElement>("[role=slider]");
const refusal = () => one(".light-pointer [role=alert]").textContent;
const status = (row = 0) => document.querySelectorAll(".photo-draft [role=status]")[row]?.textContent ?? "";

const press = (key: string, target: Element = pad(), shiftKey = false) => {
  const event = new KeyboardEvent("keydown", { key, shiftKey, bubbles: true, cancelable: true });
  return page.settle(() => void target.dispatchEvent(event)).then(() => event);
};
const pointer = (type: string, x: number, y: number) =>
  page.settle(() => {
    pad().getBoundingClientRect = () => new DOMRect(100, 50, 200, 400);
    pad().dispatchEvent(new PointerEvent(type, { clientX: x, clientY: y, button: 0, bubbles: true }));
  });

async function open(...names: string[]) {
  const closet = memoryCloset();
  page = await mountPage(closet);
  await page.click("Add from photos");
  await page.files("Photos", names.map(picture));
  return { closet, ...page };
}

describe("pointing at something white", () => {
  it("is never done by itself, and leaves colours, name and picture corrected when asked", async () => {
    const { click, closet, choose, text } = await open("IMG_2034.jpg");
    expect(text()).toContain("Not sure of these colours.");
    expect(page.field("Name").value).toBe("Teal blue piece");
    await choose("Worn as", "top");
    expect(status()).toBe("");
    await click(POINT);
    await press("ArrowDown");
    await press("Enter");
    expect(page.field("Name").value).toBe("Navy blue top");
    expect(status()).toContain("Read as if that spot were white or grey.");
    expect(text()).not.toContain("Not sure of these colours.");
    expect(document.querySelector(".light-pointer")).toBeNull();
    expect(document.activeElement).toBe(page.button(POINT));
    await click("Put 1 piece in the closet");
    const [piece] = await closet.pieces();
    expect(piece).toMatchObject({ name: "Navy blue top", picture: NAVY_DOT });
    expect(piece?.swatches).toEqual([{ oklab: CLOTH_COLORS.navy, share: 1 }]);
  });

  it("can be taken back", async () => {
    const { click } = await open("linen skirt.jpg");
    await click(POINT);
    await press("ArrowDown");
    await click("Take this spot");
    expect(one<HTMLImageElement>(".photo-picture").src).toBe(NAVY_DOT);
    await click("As photographed");
    expect(one<HTMLImageElement>(".photo-picture").src).not.toBe(NAVY_DOT);
    expect(one(".named-cloth-names").textContent).toBe("teal blue");
    expect(status()).toBe("");
    expect(document.activeElement).toBe(page.button(POINT));
    expect(page.has("As photographed")).toBe(false);
  });

  it("says why a spot cannot serve, changes nothing and lets another be tried", async () => {
    const { click } = await open("linen skirt.jpg");
    await click(POINT);
    await press("ArrowUp");
    await press("Enter");
    expect(refusal()).toBe("This spot is too dark. Point at something lighter.");
    expect(one(".named-cloth-names").textContent).toBe("teal blue");
    await press("ArrowDown", pad(), true);
    await press("Enter");
    expect(one(".named-cloth-names").textContent).toBe("navy blue");
  });

  it("keeps the name, slot and colours that a person gave before, and offers the photo's again", async () => {
    const { click, choose, closet } = await open("IMG_2034.jpg");
    await choose("Name", "Aunt's blazer");
    await choose("Worn as", "layer");
    await click("Correct the colours");
    await click("olive");
    await click("Done with the colours");
    await click(POINT);
    await press("ArrowDown");
    await press("Enter");
    expect(status()).toContain("The colours you chose yourself stay as they are.");
    expect(one(".named-cloth-names").textContent).toContain("olive");
    await click("As photographed");
    expect(one(".named-cloth-names").textContent).toContain("olive");
    await click(POINT);
    await press("ArrowDown");
    await press("Enter");
    await click("Back to the photo's colours");
    expect(one(".named-cloth-names").textContent).toBe("navy blue");
    await click("Put 1 piece in the closet");
    expect(await closet.pieces()).toMatchObject([
      { name: "Aunt's blazer", slot: "layer", swatches: [{ oklab: CLOTH_COLORS.navy }] },
    ]);
  });

  it("concerns one photo of several, and one at a time", async () => {
    const { click } = await open("linen skirt.jpg", "wool skirt.jpg");
    await click(`${POINT} in Linen skirt`);
    await click(`${POINT} in Wool skirt`);
    expect(document.querySelectorAll(".light-pointer")).toHaveLength(1);
    await press("ArrowDown");
    await press("Enter");
    const names = [...document.querySelectorAll(".named-cloth-names")].map(({ textContent }) => textContent);
    expect(names).toEqual(["teal blue", "navy blue"]);
    expect([status(0), status(1)].map((said) => said !== "")).toEqual([false, true]);
  });

  it("is left by Escape from anywhere, which the dialog never hears", async () => {
    const { click } = await open("linen skirt.jpg");
    await click(POINT);
    const event = await press("Escape", page.field("Name"));
    expect(event.defaultPrevented).toBe(true);
    expect(document.querySelector(".light-pointer")).toBeNull();
    expect(document.querySelector("dialog")).not.toBeNull();
    expect(document.activeElement).toBe(page.button(POINT));
    const next = await press("Escape", page.field("Name"));
    expect(next.defaultPrevented).toBe(false);
  });

  it("takes a press where it is lifted, unless it left the picture or began beside it", async () => {
    const { click } = await open("linen skirt.jpg");
    await click(POINT);
    await pointer("pointerup", 200, 400);
    await pointer("pointerdown", 200, 400);
    await pointer("pointerleave", 99, 400);
    await pointer("pointerup", 200, 400);
    await pointer("pointerdown", 200, 400);
    await pointer("pointerup", 320, 400);
    expect(one(".named-cloth-names").textContent).toBe("teal blue");
    await pointer("pointerdown", 200, 400);
    await pointer("pointermove", 201, 401);
    await pointer("pointerup", 201, 401);
    expect(one(".named-cloth-names").textContent).toBe("navy blue");
  });
});

describe("places in a picture", () => {
  it("are found under the pointer, and nowhere beside the picture", () => {
    const box = { left: 10, top: 20, width: 200, height: 100 };
    expect(spotUnder(box, 60, 95)).toEqual({ x: 0.25, y: 0.75 });
    expect(spotUnder(box, 210, 120)).toEqual({ x: 1, y: 1 });
    expect(spotUnder(box, 9, 50)).toBeNull();
    expect(spotUnder(box, 60, 121)).toBeNull();
    expect(spotUnder({ left: 0, top: 0, width: 0, height: 0 }, 0, 0)).toBeNull();
  });
  it.each([0.5, 1, 1.5])(
    "move by the same length across and down, and stay inside (%d wide to 1 high)",
    (ratio) => {
      const middle = { x: 0.5, y: 0.5 };
      const across = steppedSpot(middle, "ArrowRight", false, ratio)?.x ?? 0;
      const down = steppedSpot(middle, "ArrowDown", false, ratio)?.y ?? 0;
      expect((across - 0.5) * ratio).toBeCloseTo(down - 0.5, 9);
      expect(steppedSpot(middle, "ArrowLeft", true, ratio)?.x).toBeLessThan(0.5 - (across - 0.5));
      expect(steppedSpot({ x: 0, y: 0 }, "ArrowUp", true, ratio)).toEqual({ x: 0, y: 0 });
      expect(steppedSpot(middle, "a", false, ratio)).toBeNull();
    },
  );
});
