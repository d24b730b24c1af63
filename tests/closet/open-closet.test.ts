import { IDBFactory } from "fake-indexeddb";
import { createStore, get, set, setMany } from "idb-keyval";
import { beforeEach, describe, expect, it } from "vitest";
import { openCloset } from "../../lib/closet/open-closet.ts";
import { PALETTES_MOST } from "../../lib/closet/palette-cache.ts";
import type { Correction, Piece, Wish } from "../../lib/closet/piece.ts";
import { VISIONS } from "../../lib/color/color-vision.ts";
import type { Palette } from "../../lib/sample/palette.ts";
import { quietBell } from "./quiet-bell.ts";

const piece = (id: string, addedAt = 1): Piece => ({
  id,
  name: `Skirt ${id}`,
  slot: "bottom",
  swatches: [{ oklab: [0.5, 0.1, 0.1], share: 1 }],
  addedAt,
});
const palette = (confidence: number): Palette => ({
  swatches: [{ oklab: [0.5, 0.1, 0.1], share: 1 }],
  confidence,
  evidence: ["pixels"],
});
const wish = (id: string, savedAt: number): Wish => ({
  id,
  title: "Wool coat",
  slot: "layer",
  palette: palette(0.8),
  price: null,
  link: null,
  store: "shop.example",
  savedAt,
});
const correction = (productKey: string): Correction => ({
  productKey,
  swatches: [{ oklab: [0.4, 0, 0.1], share: 1 }],
  correctedAt: 5,
});

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe("openCloset", () => {
  it("keeps pieces, wishes and corrections, newest first, across contexts", async () => {
    const writer = openCloset(quietBell());
    const reader = openCloset(quietBell());
    await writer.putPieces([piece("a", 1), piece("b", 3), piece("c", 2)]);
    await writer.putWishes([wish("w1", 1), wish("w2", 2)]);
    await writer.putCorrections([correction("k1")]);
    expect((await reader.pieces()).map(({ id }) => id)).toEqual(["b", "c", "a"]);
    expect(await reader.wishes()).toEqual([wish("w2", 2), wish("w1", 1)]);
    expect(await reader.corrections()).toEqual([correction("k1")]);
    expect(await reader.correctionsOf(["k1", "k2"])).toEqual({ k1: correction("k1").swatches });
  });

  it("may repeat every write without harm", async () => {
    const closet = openCloset(quietBell());
    for (let round = 0; round < 2; round += 1) await closet.putPieces([piece("a"), piece("b")]);
    for (let round = 0; round < 2; round += 1) await closet.removePieces(["b", "unknown"]);
    expect(await closet.pieces()).toEqual([piece("a")]);
  });

  it("loses no piece when two contexts write at once", async () => {
    const closets = [openCloset(quietBell()), openCloset(quietBell())];
    await Promise.all(
      Array.from({ length: 40 }, (_, index) => closets[index % 2]?.putPieces([piece(`p${index}`, index)])),
    );
    expect(await closets[0]?.pieces()).toHaveLength(40);
  });

  it("removes wishes and corrections", async () => {
    const closet = openCloset(quietBell());
    await closet.putWishes([wish("w1", 1), wish("w2", 2)]);
    await closet.putCorrections([correction("k1"), correction("k2")]);
    await closet.removeWishes(["w1"]);
    await closet.removeCorrections(["k2"]);
    expect((await closet.wishes()).map(({ id }) => id)).toEqual(["w2"]);
    expect((await closet.corrections()).map(({ productKey }) => productKey)).toEqual(["k1"]);
  });

  it("keeps how a person sees colours until they say otherwise", async () => {
    const writer = openCloset(quietBell());
    const reader = openCloset(quietBell());
    expect(await reader.vision()).toBeNull();
    for (const vision of [...VISIONS, null]) {
      await writer.putVision(vision);
      expect(await reader.vision()).toBe(vision);
    }
  });

  it("takes a vision that it does not know for none, without losing it or anything else", async () => {
    const closet = openCloset(quietBell());
    await closet.putPieces([piece("a")]);
    const settings = createStore("hueward-settings", "settings");
    for (const unknown of ["greyscale", 7, { vision: "protan" }]) {
      await set("vision", unknown, settings);
      expect(await closet.vision()).toBeNull();
      expect(await closet.pieces()).toEqual([piece("a")]);
      expect(await get("vision", settings)).toEqual(unknown);
    }
    await closet.putVision("tritan");
    expect(await closet.vision()).toBe("tritan");
  });

  it("leaves a broken record out and never destroys it", async () => {
    const closet = openCloset(quietBell());
    await closet.putPieces([piece("good")]);
    const broken = { id: "bad", name: 7, slot: "bottom", swatches: [], addedAt: 1 };
    const store = createStore("hueward-pieces", "pieces");
    await set("bad", broken, store);
    expect((await closet.pieces()).map(({ id }) => id)).toEqual(["good"]);
    await closet.putPieces([piece("other")]);
    expect(await get("bad", store)).toEqual(broken);
  });

  it("keeps a piece whose picture alone is broken", async () => {
    const closet = openCloset(quietBell());
    await closet.pieces();
    await set("a", { ...piece("a"), picture: "x" }, createStore("hueward-pieces", "pieces"));
    expect(await closet.pieces()).toEqual([piece("a")]);
  });

  it("refuses to store a record that is no piece, and stores nothing of that write", async () => {
    const closet = openCloset(quietBell());
    await expect(closet.putPieces([piece("a"), { ...piece("b"), name: "" }])).rejects.toThrow(
      "The name is missing",
    );
    expect(await closet.pieces()).toEqual([]);
  });

  it("rings after each stored write of pieces, wishes, corrections and the vision, not for palettes or nothing", async () => {
    const bell = quietBell();
    const closet = openCloset(bell);
    const heard: number[] = [];
    const listening = new AbortController();
    closet.onChange(() => heard.push(bell.rings()), listening.signal);
    await closet.putPieces([piece("a")]);
    await closet.putWishes([wish("w", 1)]);
    await closet.putCorrections([correction("k")]);
    await closet.removePieces(["a"]);
    await closet.removeWishes(["w"]);
    await closet.removeCorrections(["k"]);
    await closet.putVision("deutan");
    await closet.rememberPalettes([{ picture: "https://cdn.example/a.jpg", palette: palette(1) }]);
    await closet.putPieces([]);
    await closet.removePieces([]);
    expect(heard).toEqual([1, 2, 3, 4, 5, 6, 7]);
    listening.abort();
    await closet.putPieces([piece("a")]);
    expect(heard).toHaveLength(7);
  });

  it("has stored a write before it rings", async () => {
    const reader = openCloset(quietBell());
    const seen: number[] = [];
    const writer = openCloset({
      ring: async () => {
        seen.push((await reader.pieces()).length);
      },
      onRing: () => {},
    });
    await writer.putPieces([piece("a"), piece("b")]);
    expect(seen).toEqual([2]);
  });

  it("remembers palettes by picture and forgets the oldest", async () => {
    let time = 0;
    const closet = openCloset(quietBell(), () => time);
    const entry = (index: number) => ({ picture: `https://cdn.example/${index}.jpg`, palette: palette(0.5) });
    for (let batch = 0; batch < 21; batch += 1) {
      time = batch;
      await closet.rememberPalettes(Array.from({ length: 100 }, (_, index) => entry(batch * 100 + index)));
    }
    const known = await closet.palettesOf(Array.from({ length: 2100 }, (_, index) => entry(index).picture));
    expect(Object.keys(known).length).toBeLessThanOrEqual(PALETTES_MOST);
    expect(Object.keys(known).length).toBeGreaterThan(PALETTES_MOST / 2);
    expect(known[entry(0).picture]).toBeUndefined();
    expect(known[entry(2099).picture]).toEqual(palette(0.5));
  });

  it("does not keep a palette under a picture that is its own address, nor read a broken one", async () => {
    const closet = openCloset(quietBell());
    const long = `data:image/png;base64,${"A".repeat(4000)}`;
    await closet.rememberPalettes([{ picture: long, palette: palette(1) }]);
    await set("https://cdn.example/x", { palette: 1, time: 1 }, createStore("hueward-palettes", "palettes"));
    expect(await closet.palettesOf([long, "https://cdn.example/x"])).toEqual({});
  });

  it("gets rid of broken palettes first", async () => {
    const closet = openCloset(quietBell(), () => 7);
    const store = createStore("hueward-palettes", "palettes");
    await setMany(
      Array.from({ length: PALETTES_MOST }, (_, index) => [`broken-${index}`, null]),
      store,
    );
    await closet.rememberPalettes([{ picture: "https://cdn.example/a", palette: palette(1) }]);
    expect(await closet.palettesOf(["https://cdn.example/a"])).toEqual({
      "https://cdn.example/a": palette(1),
    });
  });

  it("does not open a closet that a newer version wrote, and opens it again after the update", async () => {
    const about = createStore("hueward-about", "about");
    await set("version", 2, about);
    const closet = openCloset(quietBell());
    await expect(closet.pieces()).rejects.toThrow("newer Hueward");
    await expect(closet.putPieces([piece("a")])).rejects.toThrow("newer Hueward");
    await expect(closet.vision()).rejects.toThrow("newer Hueward");
    await expect(closet.putVision("protan")).rejects.toThrow("newer Hueward");
    await set("version", 1, about);
    expect(await closet.pieces()).toEqual([]);
  });
});
