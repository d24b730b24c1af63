import { describe, expect, it, vi } from "vitest";
import type { AskWorker } from "../../lib/link/messages.ts";
import type { FoundProduct } from "../../lib/page/product.ts";
import { PictureError, REASONS } from "../../lib/pixels/picture-error.ts";
import type { PictureSource, ReadPicture } from "../../lib/pixels/picture-reader.ts";
import { readPalette } from "../../lib/visit/read-palette.ts";

const product = {
  title: "Crimson shirt",
  told: { category: "", color: "" },
  images: ["http://shop.localhost/stand-in.gif", "http://shop.localhost/real.jpg"],
} as unknown as FoundProduct;
const source: PictureSource = { url: "http://shop.localhost/stand-in.gif", image: null };
const palette = { swatches: [{ oklab: [0.5, 0.1, 0.1], share: 1 }], confidence: 0.5, evidence: ["pixels"] };

/** A reader that fails for some addresses and sends the others to the worker. */
function readerThatFails(reasons: Readonly<Record<string, string>>) {
  const tried: string[] = [];
  const read: ReadPicture = async ({ url }, { elsewhere }) => {
    tried.push(url);
    const reason = reasons[url];
    if (reason || !elsewhere) throw new PictureError(reason);
    return elsewhere(url);
  };
  return { read, tried };
}

const worker = () => vi.fn(async () => palette);

describe("readPalette", () => {
  it("hands the words and the slot on with the picture", async () => {
    const ask = worker();
    const { read } = readerThatFails({});
    expect(await readPalette(product, "top", source, read, ask as unknown as AskWorker)).toEqual(palette);
    expect(ask.mock.calls).toEqual([
      ["readPicture", { url: source.url, slot: "top", text: "Crimson shirt" }],
    ]);
  });

  it.each([REASONS.small, REASONS.broken])("reads the picture behind a stand-in: %s", async (reason) => {
    const { read, tried } = readerThatFails({ [source.url]: reason });
    expect(await readPalette(product, "top", source, read, worker() as unknown as AskWorker)).toEqual(
      palette,
    );
    expect(tried).toEqual(product.images);
  });

  it("says why where the store does not let it read, without trying other pictures", async () => {
    const { read, tried } = readerThatFails({ [source.url]: REASONS.refused });
    expect(await readPalette(product, "top", source, read, worker() as unknown as AskWorker)).toEqual({
      swatches: [],
      confidence: 0,
      evidence: [],
      reason: REASONS.refused,
    });
    expect(tried).toEqual([source.url]);
  });

  it("says so where there is no picture at all", async () => {
    const { read, tried } = readerThatFails({});
    const found = await readPalette(
      product,
      "top",
      { url: "", image: null },
      read,
      worker() as unknown as AskWorker,
    );
    expect(found.reason).toBe(REASONS.broken);
    expect(tried).toEqual([]);
  });

  it("sends no more of the page's words than the worker takes", async () => {
    const ask = worker();
    const wordy = { ...product, title: "red ".repeat(10_000) };
    await readPalette(wordy, "top", source, readerThatFails({}).read, ask as unknown as AskWorker);
    const [[, request] = []] = ask.mock.calls as unknown as [string, { text: string }][];
    expect(request?.text).toHaveLength(2_000);
  });
});
