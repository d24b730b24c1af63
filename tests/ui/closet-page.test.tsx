// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from "vitest";
import type { Closet } from "../../lib/closet/closet.ts";
import { readClosetFile } from "../../lib/closet/closet-file.ts";
import { CLOTH_COLORS } from "../../lib/closet/cloth-colors.ts";
import { threeWishes, twelvePieces } from "./example-pieces.ts";
import { NOON } from "./example-tools.ts";
import { memoryCloset } from "./memory-closet.ts";
import { type MountedPage, mountPage } from "./mount-page.tsx";

let page: MountedPage | null = null;

async function open(closet: Closet): Promise<MountedPage> {
  page = await mountPage(closet);
  return page;
}

afterEach(() => page?.unmount());

describe("adding by hand", () => {
  it("hangs a piece with its name, slot and colours", async () => {
    const closet = memoryCloset({ pieces: twelvePieces() });
    const { click, choose, text } = await open(closet);
    await click("Add a piece");
    await choose("Name", "  Pleated skirt ");
    await choose("Worn as", "bottom");
    await click("red");
    await click("Another colour");
    await click("cream");
    await click("Put it in the closet");
    const [piece] = await closet.pieces();
    expect(piece).toEqual({
      id: "new-1",
      name: "Pleated skirt",
      slot: "bottom",
      swatches: [
        { oklab: CLOTH_COLORS.red, share: 0.5 },
        { oklab: CLOTH_COLORS.cream, share: 0.5 },
      ],
      addedAt: NOON,
    });
    expect(text()).toContain("Pleated skirt hangs in the closet.");
    expect(text()).toContain("13 pieces");
  });

  it("says what is missing and stores nothing", async () => {
    const closet = memoryCloset({ pieces: twelvePieces() });
    const { click, choose, text } = await open(closet);
    await click("Add a piece");
    await click("Put it in the closet");
    expect(text()).toContain("Give it a name, so that you know it again.");
    await choose("Name", "Skirt");
    await click("Put it in the closet");
    expect(text()).toContain("Choose where it is worn.");
    expect(await closet.pieces()).toHaveLength(12);
  });

  it("says so when the closet could not store it", async () => {
    const closet: Closet = {
      ...memoryCloset({ pieces: twelvePieces() }),
      putPieces: () => Promise.reject(new Error("The disk is full.")),
    };
    const { click, choose, text } = await open(closet);
    await click("Add a piece");
    await choose("Name", "Skirt");
    await choose("Worn as", "bottom");
    await click("Put it in the closet");
    expect(text()).toContain("Nothing was changed. The disk is full.");
  });
});

describe("changing and removing", () => {
  it("edits a piece in place and takes it back", async () => {
    const closet = memoryCloset({ pieces: twelvePieces() });
    const before = await closet.pieces();
    const { click, choose } = await open(closet);
    await click("Denim jeans");
    await click("Edit Denim jeans");
    await choose("Name", "Old jeans");
    await click("navy");
    await click("Save the changes");
    const jeans = (await closet.pieces()).find(({ name }) => name === "Old jeans");
    expect(jeans?.id).toBe(before.find(({ name }) => name === "Denim jeans")?.id);
    expect(jeans?.swatches).toEqual([{ oklab: CLOTH_COLORS.navy, share: 1 }]);
    await click("Undo");
    expect(await closet.pieces()).toEqual(before);
  });

  it("removes a piece, puts the focus on undo, and undo brings it back as it was", async () => {
    const closet = memoryCloset({ pieces: twelvePieces() });
    const before = await closet.pieces();
    const { click, has, button, text } = await open(closet);
    await click("Tan bag");
    button("Remove Tan bag").focus();
    await click("Remove Tan bag");
    expect(await closet.pieces()).toHaveLength(11);
    expect(has("Tan bag")).toBe(false);
    expect(text()).toContain("Tan bag was removed.");
    expect(document.activeElement).toBe(button("Undo"));
    await click("Undo");
    expect(await closet.pieces()).toEqual(before);
    expect(has("Tan bag")).toBe(true);
    expect(text()).toContain("Taken back.");
  });
});

describe("the first minutes", () => {
  it("puts what was ticked into the closet, in the colours chosen", async () => {
    const closet = memoryCloset();
    const { click, text, button } = await open(closet);
    expect(button("Tick what you own").hasAttribute("disabled")).toBe(true);
    await click("Denim jeans");
    await click("Navy blazer");
    await click("Recolour Navy blazer");
    await click("olive");
    expect(text()).toContain("Olive blazer");
    await click("Put 2 pieces in the closet");
    const pieces = await closet.pieces();
    expect(pieces.map(({ name, slot }) => [name, slot]).toSorted()).toEqual([
      ["Denim jeans", "bottom"],
      ["Olive blazer", "layer"],
    ]);
    expect(pieces.find(({ slot }) => slot === "layer")?.swatches[0]?.oklab).toEqual(CLOTH_COLORS.olive);
    expect(text()).toContain("2 pieces now hang in the closet.");
    expect(text()).not.toContain("Start with what most closets hold");
  });

  it("leaves out what was unticked again", async () => {
    const closet = memoryCloset();
    const { click } = await open(closet);
    await click("Denim jeans");
    await click("Red dress");
    await click("Denim jeans");
    await click("Put 1 piece in the closet");
    expect((await closet.pieces()).map(({ name }) => name)).toEqual(["Red dress"]);
  });
});

describe("photos", () => {
  const picture = (name: string) => new File(["x"], name, { type: "image/jpeg" });

  it("names pieces from their files, reads the slot there, and keeps several at once", async () => {
    const closet = memoryCloset({ pieces: twelvePieces() });
    const { click, files, text } = await open(closet);
    await click("Add from photos");
    await files("Photos", [
      picture("green_wool-skirt.jpg"),
      picture("IMG_2034.jpg"),
      new File(["x"], "notes.txt", { type: "text/plain" }),
    ]);
    expect(text()).toContain("This file is no picture.");
    await click("Put 2 pieces in the closet");
    expect(text()).toContain("Each piece needs a name and where it is worn.");
    const slots = [...document.querySelectorAll<HTMLSelectElement>("dialog select")].map(
      ({ value }) => value,
    );
    expect(slots).toEqual(["bottom", ""]);
    await click("Leave out Teal blue piece");
    await click("Put 1 piece in the closet");
    const [piece] = await closet.pieces();
    expect(piece).toMatchObject({
      name: "Green wool skirt",
      slot: "bottom",
      swatches: [{ oklab: CLOTH_COLORS.teal }],
    });
    expect(piece?.picture).toMatch(/^data:image\//);
  });
});

describe("the closet file", () => {
  const json = (text: string) => new File([text], "closet.json", { type: "application/json" });

  it("exports what its own reader reads back", async () => {
    const closet = memoryCloset({ pieces: twelvePieces(), wishes: threeWishes() });
    const { click, saved } = await open(closet);
    await click("Export the closet");
    const read = readClosetFile(saved.get("hueward-closet-2026-02-02.json") ?? "");
    expect(read.leftOut).toEqual([]);
    expect(read.pieces).toEqual(await closet.pieces());
    expect(read.wishes).toEqual(await closet.wishes());
  });

  it("adds a file to the closet and takes it back whole", async () => {
    const closet = memoryCloset({ pieces: twelvePieces() });
    const before = await closet.pieces();
    const { files, click, text } = await open(closet);
    const skirt = { name: "Pleated skirt", slot: "bottom", swatches: [{ hex: "#c8102e", share: 1 }] };
    await files("Import a closet file", [json(JSON.stringify({ hueward: 1, pieces: [skirt] }))]);
    expect(await closet.pieces()).toHaveLength(13);
    expect(text()).toContain("The file was read: 1 piece, 0 wishes.");
    await click("Undo");
    expect(await closet.pieces()).toEqual(before);
  });

  it("names the entries it could not use and keeps the others", async () => {
    const closet = memoryCloset({ pieces: twelvePieces() });
    const { files } = await open(closet);
    const good = { name: "Skirt", slot: "bottom", swatches: [{ hex: "#c8102e", share: 1 }] };
    const bad = { name: "Ghost", slot: "cupboard", swatches: [] };
    await files("Import a closet file", [json(JSON.stringify({ hueward: 1, pieces: [good, bad] }))]);
    expect(await closet.pieces()).toHaveLength(13);
    expect(document.querySelector("[role=alert] .alert")?.textContent).toContain("“Ghost” was left out.");
  });

  it("says what to do with a file that is none, and changes nothing", async () => {
    const closet = memoryCloset({ pieces: twelvePieces() });
    const { files } = await open(closet);
    await files("Import a closet file", [json("Dear diary")]);
    expect(document.querySelector("[role=alert] .alert")?.textContent).toContain(
      "Choose a file that Hueward exported.",
    );
    expect(await closet.pieces()).toHaveLength(12);
  });
});

it("says so when the closet cannot be opened", async () => {
  const closet: Closet = {
    ...memoryCloset(),
    pieces: () => Promise.reject(new Error("The closet is locked.")),
  };
  const { text } = await open(closet);
  expect(text()).toContain("The closet is locked. Reload the page");
});
