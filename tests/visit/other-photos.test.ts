// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { AskWorker, WorkerRequests } from "../../lib/link/messages.ts";
import type { FoundProduct } from "../../lib/page/product.ts";
import { PictureError, REASONS } from "../../lib/pixels/picture-error.ts";
import type { ReadPicture } from "../../lib/pixels/picture-reader.ts";
import { pixelsOfImage } from "../../lib/pixels/pixels-of-image.ts";
import type { Palette } from "../../lib/sample/palette.ts";
import { readPalette } from "../../lib/visit/read-palette.ts";
import { visit } from "../../lib/visit/visit.ts";
import { fakeStore, RED, tile } from "./fake-store.ts";

const UNSURE: Palette = { ...RED, confidence: 0.5 };
const SEEN: Palette = { ...RED, confidence: 0.4, evidence: ["pixels", "screen"] };
const BACKED: Palette = { ...RED, confidence: 0.9, evidence: ["pixels", "photos"] };

/** Visits under way. */
const visits: AbortController[] = [];

/** A tile whose second picture has come; it stands in for any that a page may read. */
function tileWithTwo(name: string, { open = true } = {}): HTMLElement {
  const root = tile(name);
  const second = document.createElement("img");
  second.src = `http://shop.localhost/i/${name}-back.jpg`;
  if (open) second.crossOrigin = "anonymous";
  Object.defineProperty(second, "complete", { value: true });
  Object.defineProperty(second, "naturalWidth", { value: 300 });
  root.querySelector("a")?.append(second);
  for (const image of root.querySelectorAll("img"))
    Object.defineProperty(image, "naturalHeight", { value: 400 });
  return root;
}

/** Files drawn so far, and files whose pixels the browser keeps to itself. */
const drawn: string[] = [];
const kept = new Set<string>();

/** What a drawing needs of a canvas: its pixels tell whether the second picture was drawn. */
const context = {
  clearRect: () => undefined,
  drawImage({ src }: HTMLImageElement) {
    const file = src.replace(/.*\//, "");
    drawn.push(file);
    if (kept.has(file)) throw new DOMException("The canvas is tainted.", "SecurityError");
  },
  getImageData: () => ({ data: Uint8ClampedArray.of(drawn.at(-1)?.includes("back") ? 2 : 1) }),
};

beforeEach(() => {
  vi.spyOn(HTMLCanvasElement.prototype, "getContext").mockReturnValue(context as never);
});
afterEach(() => {
  for (const visit of visits.splice(0)) visit.abort();
  // A canvas that refused is given up, and with it this one.
  kept.add("last.jpg");
  const last = Object.assign(new Image(), { src: "http://shop.localhost/last.jpg" });
  expect(() => pixelsOfImage(last)).toThrow(REASONS.refused);
  drawn.length = 0;
  kept.clear();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe("a picture that leaves its colour unsure", () => {
  type Request = WorkerRequests["samplePicture"]["request"];

  /** Reads the palette of a tile; the worker answers with what is given, in turn. */
  async function readOf(root: HTMLElement, ...answers: (Palette | Error)[]) {
    const image = root.querySelector("img");
    const product = {
      role: "tile",
      title: "Crimson shirt",
      told: { category: "", color: "" },
      images: [],
      root,
      image,
    } as unknown as FoundProduct;
    const asked: Request[] = [];
    const ask = (async (_: string, request: Request) => {
      const answer = answers[asked.push(request) - 1];
      if (answer instanceof Error) throw answer;
      return answer;
    }) as unknown as AskWorker;
    const read: ReadPicture = async (source, { ofImage }) => {
      if (!source.image) throw new PictureError(REASONS.refused);
      return ofImage(source.image);
    };
    const palette = await readPalette(product, "top", { url: image?.src ?? "", image }, read, ask);
    return {
      palette,
      asked: asked.map(({ pixels, others }) => [pixels, ...others].map(({ data }) => data[0])),
    };
  }

  it("is read together with the product's other picture", async () => {
    const { palette, asked } = await readOf(tileWithTwo("shirt"), UNSURE, BACKED);
    expect(palette).toEqual(BACKED);
    expect(asked).toEqual([[1], [1, 2]]);
  });

  it("is read alone where it is sure after all, or where nothing can be read from it", async () => {
    const nothing: Palette = { swatches: [], confidence: 0, evidence: [], reason: "The picture is empty." };
    for (const answer of [RED, nothing]) {
      const { palette, asked } = await readOf(tileWithTwo("shirt"), answer);
      expect(palette).toEqual(answer);
      expect(asked).toEqual([[1]]);
    }
  });

  it("is read alone where the page may not read the other, or the other has no pixels to give", async () => {
    const shut = await readOf(tileWithTwo("shirt", { open: false }), UNSURE);
    expect(shut.asked).toEqual([[1]]);
    expect(drawn).toEqual(["shirt.jpg"]);
    kept.add("shirt-back.jpg");
    const tainted = await readOf(tileWithTwo("shirt"), UNSURE);
    expect(tainted.palette).toEqual(UNSURE);
    expect(tainted.asked).toEqual([[1]]);
  });

  it("keeps its first answer where the second one does not come", async () => {
    const { palette, asked } = await readOf(tileWithTwo("shirt"), UNSURE, new Error("The worker is gone."));
    expect(palette).toEqual(UNSURE);
    expect(asked).toHaveLength(2);
  });
});

describe("what was remembered of a picture", () => {
  const picture = "http://shop.localhost/i/shirt.jpg";

  /** A visit of one tile of whose first picture this is remembered. */
  async function visitOf(root: HTMLElement, known: Palette, corrections = {}, read: Palette = BACKED) {
    const store = fakeStore([root], {
      recall: ({ products }) => ({
        slots: Object.fromEntries(products.map(({ key }) => [key, "top" as const])),
        corrections,
        palettes: { [picture]: known },
      }),
    });
    store.readers.readPalette.mockResolvedValue(read);
    visits.push(store.ended);
    void visit(store.deps, store.readers);
    await vi.waitFor(() => expect(store.requests("judge")).toHaveLength(1));
    const [judged] = store.requests("judge");
    return { store, palette: judged?.candidates[0]?.palette };
  }

  it("gives way where it is unsure and another picture is there, and the better answer is remembered for it", async () => {
    const { store, palette } = await visitOf(tileWithTwo("shirt"), UNSURE);
    expect(palette).toEqual(BACKED);
    const better = [{ entries: [{ picture, palette: BACKED }] }];
    await vi.waitFor(() => expect(store.requests("remember")).toEqual(better));
    expect(store.requests("judge")).toHaveLength(1);
  });

  it.each([
    ["sure", RED],
    ["backed by other pictures", { ...BACKED, confidence: 0.7 }],
  ] as const)("stays where it is %s", async (_, known) => {
    const { store, palette } = await visitOf(tileWithTwo("shirt"), known);
    expect(palette).toEqual(known);
    expect(store.readers.readPalette).not.toHaveBeenCalled();
  });

  it("stays where no other picture can be read", async () => {
    const { store, palette } = await visitOf(tileWithTwo("shirt", { open: false }), UNSURE);
    expect(palette).toEqual(UNSURE);
    expect(store.readers.readPalette).not.toHaveBeenCalled();
  });

  it("gives way where it was seen on the screen alone and the picture can be read now", async () => {
    const { store, palette } = await visitOf(tile("shirt"), SEEN);
    expect(palette).toEqual(BACKED);
    const better = [{ entries: [{ picture, palette: BACKED }] }];
    await vi.waitFor(() => expect(store.requests("remember")).toEqual(better));
  });

  it("stays where it was seen on the screen and the picture still cannot be read", async () => {
    const unread: Palette = { swatches: [], confidence: 0, evidence: [], reason: REASONS.refused };
    const { store, palette } = await visitOf(tile("shirt"), SEEN, {}, unread);
    expect(store.readers.readPalette).toHaveBeenCalledOnce();
    expect(palette).toEqual(SEEN);
  });

  it("gives way to a person's word in any case", async () => {
    const swatches = [{ oklab: [0.3, 0, 0.1], share: 1 }] as const;
    const { store, palette } = await visitOf(tileWithTwo("shirt"), UNSURE, {
      "http://shop.localhost/p/shirt": swatches,
    });
    expect(palette).toEqual({ swatches, confidence: 1, evidence: ["person"] });
    expect(store.readers.readPalette).not.toHaveBeenCalled();
  });
});
