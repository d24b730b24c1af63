import "fake-indexeddb/auto";
import { beforeEach, describe, expect, it } from "vitest";
import type { Closet } from "../../lib/closet/closet.ts";
import { openCloset } from "../../lib/closet/open-closet.ts";
import { parseColor } from "../../lib/color/parse-color.ts";
import type { Candidate } from "../../lib/fit/verdict.ts";
import { createAsk } from "../../lib/link/ask.ts";
import type { KeepRequest } from "../../lib/link/messages.ts";
import { createServer } from "../../lib/link/serve.ts";
import type { Palette } from "../../lib/sample/palette.ts";
import { createHandlers } from "../../lib/worker/create-handlers.ts";
import { quietBell } from "../closet/quiet-bell.ts";

const PAGE = { id: "hueward", tab: { id: 7 }, frameId: 0, url: "https://shop.example/" };
const UNREAD: Palette = { swatches: [], confidence: 0, evidence: [], reason: "The picture did not load." };

const paletteOf = (hex: string): Palette => ({
  swatches: [{ oklab: parseColor(hex), share: 1 }],
  confidence: 0.9,
  evidence: ["pixels"],
});
const skirt: Candidate = {
  key: "https://shop.example/skirt",
  title: "Red skirt",
  slot: "bottom",
  palette: paletteOf("#c8102e"),
};
const keep = (candidate: Candidate, picture: string | null = null): KeepRequest => ({
  candidate,
  price: { amount: 49, currency: "EUR" },
  link: candidate.key,
  pageUrl: "https://shop.example/all",
  picture,
});

/** A page and its worker, joined as in product: every message is cloned on its way and checked on arrival. */
function joined(closet: Closet = openCloset(quietBell())) {
  const ran: unknown[] = [];
  const handlers = createHandlers({
    closet,
    pictures: {
      read: async (url, _, pageUrl) => {
        ran.push([url, pageUrl]);
        return UNREAD;
      },
      thumbnail: async (picture, pageUrl) =>
        picture.startsWith("https:") && pageUrl.startsWith("https:") ? "data:image/jpeg;base64,AAAA" : null,
    },
    switchOff: async (origin) => void ran.push(origin),
    runPart: async (...part) => void ran.push(part),
    now: () => 1_000,
    signal: new AbortController().signal,
  });
  const answer = createServer(handlers, { id: "hueward", origin: "chrome-extension://hueward" });
  const ask = createAsk(async (message) => structuredClone(await answer(structuredClone(message), PAGE)));
  return { ask, closet, ran };
}

describe("the worker's answers, as a page gets them", () => {
  let worker: ReturnType<typeof joined>;
  beforeEach(async () => {
    worker = joined();
    const { closet } = worker;
    await closet.removePieces((await closet.pieces()).map(({ id }) => id));
    await closet.removeWishes((await closet.wishes()).map(({ id }) => id));
    await closet.removeCorrections((await closet.corrections()).map(({ productKey }) => productKey));
    await closet.putVision(null);
  });

  it("judge by the closet as it is now, not as it was", async () => {
    const { ask } = worker;
    const request = { candidates: [{ ...skirt, key: "other" }] };
    expect((await ask("judge", request))[0]).toMatchObject({ kind: "empty-closet", count: 0 });
    await ask("ownPiece", keep(skirt));
    expect((await ask("judge", request))[0]).toMatchObject({
      kind: "duplicate",
      headline: "You own this red",
      count: 1,
    });
    expect((await ask("judge", { candidates: [skirt] }))[0]).toMatchObject({ kind: "owned" });
  });

  it("come again after the closet could not be read once", async () => {
    let troubles = 1;
    const closet = openCloset(quietBell());
    const { ask } = joined({
      ...closet,
      pieces: () => (troubles-- > 0 ? Promise.reject(new Error("The closet is locked.")) : closet.pieces()),
    });
    await expect(ask("judge", { candidates: [skirt] })).rejects.toThrow("The closet is locked.");
    expect((await ask("judge", { candidates: [skirt] }))[0]).toMatchObject({ kind: "empty-closet" });
  });

  it("keep a piece once, however often it is said", async () => {
    const { ask, closet } = worker;
    const first = await ask("ownPiece", keep(skirt, "https://cdn.example/skirt.jpg"));
    expect(await ask("ownPiece", keep(skirt, "https://cdn.example/skirt.jpg"))).toEqual(first);
    expect(await closet.pieces()).toEqual([
      {
        id: first.id,
        name: "Red skirt",
        slot: "bottom",
        swatches: skirt.palette.swatches,
        addedAt: 1_000,
        productKey: skirt.key,
        picture: "data:image/jpeg;base64,AAAA",
      },
    ]);
  });

  it("refuse in plain words what would put a wrong piece in the closet", async () => {
    const { ask, closet } = worker;
    await expect(ask("ownPiece", keep({ ...skirt, slot: null }))).rejects.toThrow("where it is worn");
    await expect(ask("ownPiece", keep({ ...skirt, palette: UNREAD }))).rejects.toThrow(
      "Pick its colour first",
    );
    expect(await closet.pieces()).toEqual([]);
  });

  it("save a wish with its store, and take it back", async () => {
    const { ask, closet } = worker;
    const { id } = await ask("saveWish", keep(skirt));
    expect(await closet.wishes()).toMatchObject([
      { id, title: "Red skirt", store: "shop.example", savedAt: 1_000 },
    ]);
    expect((await ask("explain", { candidates: [skirt] }))[0]?.wished).toBe(true);
    await ask("dropWish", { id });
    expect((await ask("explain", { candidates: [skirt] }))[0]?.wished).toBe(false);
  });

  it("explain with every piece that is mentioned, its colours named", async () => {
    const { ask } = worker;
    await ask("ownPiece", keep(skirt));
    const top: Candidate = {
      ...skirt,
      key: "top",
      title: "Green top",
      slot: "top",
      palette: paletteOf("#1f9d55"),
    };
    const [explained] = await ask("explain", { candidates: [top] });
    const [fit] = explained?.verdict.pieces ?? [];
    expect(fit?.relation).toBe("complementary");
    const piece = explained?.pieces[fit?.pieceId ?? ""];
    expect(piece).toMatchObject({ name: "Red skirt", slot: "bottom" });
    expect(piece?.swatches[0]?.name).toMatch(/red/);
  });

  it("tell which pieces look alike to this person, from the moment they say how they see", async () => {
    const { ask, closet } = worker;
    await ask("ownPiece", keep(skirt));
    const olive = { ...skirt, key: "olive", slot: "top" as const, palette: paletteOf("#64663d") };
    await closet.putPieces([
      { id: "red", name: "Red jeans", slot: "bottom", swatches: paletteOf("#b32a33").swatches, addedAt: 1 },
    ]);
    const alike = async () =>
      (await ask("explain", { candidates: [olive] }))
        .flatMap(({ verdict }) => verdict.pieces)
        .filter(({ lookAlike }) => lookAlike)
        .map(({ pieceId }) => pieceId);
    expect(await alike()).toEqual([]);
    await closet.putVision("deutan");
    expect(await alike()).toEqual(["red"]);
    await closet.putVision("tritan");
    expect(await alike()).toEqual([]);
  });

  it("recall slots by the words, and what was read or said", async () => {
    const { ask } = worker;
    const picture = "https://cdn.example/skirt.jpg";
    await ask("remember", { entries: [{ picture, palette: skirt.palette }] });
    await ask("correct", { productKey: "a", swatches: skirt.palette.swatches });
    const words = { slotTexts: ["Marla", "Skirts"], language: "en" };
    const known = await ask("recall", { products: [{ key: "a", ...words }], pictures: [picture] });
    expect(known).toEqual({
      slots: { a: "bottom" },
      corrections: { a: skirt.palette.swatches },
      palettes: { [picture]: skirt.palette },
    });
    await ask("correct", { productKey: "a", swatches: [] });
    expect((await ask("recall", { products: [], pictures: [] })).corrections).toEqual({});
  });

  it("sample pixels that a page sends, and refuse those that do not fit their sizes", async () => {
    const { ask } = worker;
    const data = new Uint8ClampedArray(4 * 96 * 96).map((_, at) => [200, 16, 46, 255][at % 4] ?? 0);
    const pixels = { data, width: 96, height: 96 };
    const palette = await ask("samplePicture", { pixels, others: [], slot: null, text: "" });
    expect(palette.swatches[0]?.oklab[1]).toBeGreaterThan(0.15);
    const short = { data: data.slice(4), width: 96, height: 96 };
    await expect(ask("samplePicture", { pixels: short, others: [], slot: null, text: "" })).rejects.toThrow(
      "do not fit",
    );
  });

  it("sample a picture together with others of its product, three at most, each of which must fit its sizes", async () => {
    const { ask } = worker;
    const picture = (at: (x: number, y: number) => readonly number[]) => ({
      data: Uint8ClampedArray.from({ length: 4 * 96 * 96 }, (_, i) => {
        const pixel = i >> 2;
        return at(pixel % 96, Math.floor(pixel / 96))[i & 3] ?? 255;
      }),
      width: 96,
      height: 96,
    });
    const [white, red, navy] = [
      [245, 245, 244],
      [176, 32, 44],
      [31, 40, 74],
    ] as const;
    const inside = (x: number, y: number) => x > 16 && x < 80 && y > 24 && y < 72;
    const halves = picture((x, y) => (inside(x, y) ? (x < 48 ? red : navy) : white));
    const [bag, other] = [red, navy].map((paint) => picture((x, y) => (inside(x, 96 - y) ? paint : white)));
    if (!bag || !other) throw new Error("No pictures.");
    const hints = { slot: null, text: "" };
    const isRed = async (others: readonly (typeof bag)[]) => {
      const { swatches, evidence } = await ask("samplePicture", { pixels: halves, others, ...hints });
      expect(evidence).toContain("photos");
      return (swatches[0]?.oklab[1] ?? 0) > 0.1;
    };
    expect(await isRed([bag])).toBe(true);
    expect(await isRed([other])).toBe(false);
    const refused = (others: readonly (typeof bag)[]) =>
      expect(ask("samplePicture", { pixels: halves, others, ...hints })).rejects.toThrow();
    await refused([bag, bag, bag, bag]);
    await refused([{ ...bag, width: 95 }]);
    await refused([{ ...bag, data: bag.data.slice(4) }]);
  });

  it("read a picture for the page that asks, whatever it says of itself", async () => {
    const { ask, ran } = worker;
    const url = "https://cdn.example/skirt.jpg";
    expect(await ask("readPicture", { url, slot: null, text: "https://other.example/" })).toEqual(UNREAD);
    expect(ran).toEqual([[url, PAGE.url]]);
  });

  it("bring a part to the frame that asks", async () => {
    await worker.ask("bringPart", { name: "show" });
    expect(worker.ran).toEqual([["show", 7, 0]]);
  });
});
