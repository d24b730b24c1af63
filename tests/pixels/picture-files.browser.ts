import { describe, expect, it } from "vitest";
import { code, here, LOWER, page, there, UPPER } from "./pixels-page.ts";
import type * as Room from "./pixels-room.ts";

declare const Pixels: typeof Room;

describe("picture files", () => {
  it("stops at eight megabytes", async () => {
    const answer = await page.evaluate(
      (url) => Pixels.fetchPicture(url, new AbortController().signal).catch((error) => String(error)),
      there("open/endless"),
    );
    expect(answer).toBe("PictureError: The picture is too large to read.");
  });

  it("says that it cannot read what is no picture", async () => {
    const answers = await page.evaluate(async () => {
      const files = [
        new Blob(["not a picture"]),
        new Blob(['<svg xmlns="http://www.w3.org/2000/svg"/>'], { type: "image/svg+xml" }),
      ];
      return Promise.all(files.map((file) => Pixels.pixelsOfBlob(file).catch((error) => String(error))));
    });
    expect(answers).toEqual(Array(2).fill("PictureError: This kind of picture cannot be read."));
  });

  it("finds the size in what a browser writes, with and without transparent parts", async () => {
    const sizes = await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(70, 50);
      const context = canvas.getContext("2d", { alpha: true });
      const found: unknown[] = [];
      for (const fill of ["#b22234", "#b2223480"]) {
        context?.clearRect(0, 0, 70, 50);
        Object.assign(context ?? {}, { fillStyle: fill });
        context?.fillRect(0, 0, 70, 50);
        for (const type of ["image/png", "image/jpeg", "image/webp"]) {
          for (const quality of [0.8, 1]) {
            const file = await canvas.convertToBlob({ type, quality });
            found.push([file.type, Pixels.sizeInFile(new Uint8Array(await file.arrayBuffer()))]);
          }
        }
      }
      return found;
    });
    const each = ["image/png", "image/jpeg", "image/webp"].flatMap((type) =>
      Array(2).fill([type, { width: 70, height: 50 }]),
    );
    expect(sizes).toEqual([...each, ...each]);
  });

  it("gives parts of one without what lies beside them", async () => {
    const colorsIn = (name: string, parts: Parameters<typeof Pixels.pixelsOfSnapshot>[1]) =>
      page.evaluate(
        async ([url, all]) => {
          const file = await (await fetch(url)).blob();
          return (await Pixels.pixelsOfSnapshot(file, all)).map(({ data, width, height }) => {
            const each = Array.from({ length: width * height }, (_, at) =>
              data.slice(4 * at, 4 * at + 4).join(),
            );
            return [width, height, ...new Set(each)];
          });
        },
        [here(name), parts] as const,
      );
    // The border lies at 120 of 240 pixels down, and at 50 of 100 across.
    const across = { left: 0.2, right: 0.7 };
    const down = { top: 0.1, bottom: 0.9 };
    expect(
      await colorsIn("halves", [
        { ...across, top: 0.1, bottom: 120.4 / 240 },
        { ...across, top: 119.6 / 240, bottom: 0.9 },
      ]),
    ).toEqual([
      [96, 96, UPPER.join()],
      [96, 96, LOWER.join()],
    ]);
    expect(
      await colorsIn("clear", [
        { ...down, left: 0.1, right: 0.504 },
        { ...down, left: 0.496, right: 0.9 },
      ]),
    ).toEqual([
      [96, 96, "0,0,0,0"],
      [96, 96, UPPER.join()],
    ]);
  });

  it("keeps the shape of one that is read within a side, and never enlarges it", async () => {
    const sizes = await page.evaluate(async (url) => {
      const file = await (await fetch(url)).blob();
      const [small, whole] = [await Pixels.pixelsWithin(file, 60), await Pixels.pixelsWithin(file, 4_000)];
      return [small, whole].map(({ data, width, height }) => [
        width,
        height,
        data.length,
        ...data.slice(0, 4),
      ]);
    }, here("halves"));
    const [[small, ...smaller] = [], [whole, ...larger] = []] = sizes;
    expect([small, ...smaller]).toEqual([30, 60, 30 * 60 * 4, ...UPPER]);
    expect([whole, ...larger]).toEqual([120, 240, 120 * 240 * 4, ...UPPER]);
  });

  it("reads a file in a worker as well", async () => {
    const answer = await page.evaluate(
      async ([script, url]) => {
        const source = `${script};onmessage = async (e) => {
          const { data } = await Pixels.pixelsOfBlob(e.data);
          postMessage([[...data.slice(0, 4)], await Pixels.thumbnailOf(e.data)]);
        };`;
        const worker = new Worker(URL.createObjectURL(new Blob([source])));
        worker.postMessage(await (await fetch(url ?? "")).blob());
        return new Promise<[number[], string]>((resolve) => {
          worker.onmessage = (event) => resolve(event.data);
        });
      },
      [code, here("halves")],
    );
    expect(answer[0]).toEqual(UPPER);
    expect(answer[1]).toMatch(/^data:image\/jpeg;base64,/);
  });
});

describe("thumbnails", () => {
  /** Size of the URL, shape of the picture, and the colour of one pixel. */
  const thumbnail = (name: string, x: number) =>
    page.evaluate(
      async ([url, at]) => {
        const file = await (await fetch(String(url))).blob();
        const image = new Image();
        image.src = await Pixels.thumbnailOf(file);
        await image.decode();
        const canvas = Object.assign(document.createElement("canvas"), {
          width: image.naturalWidth,
          height: image.naturalHeight,
        });
        const context = canvas.getContext("2d");
        context?.drawImage(image, 0, 0);
        return {
          characters: image.src.length,
          size: [canvas.width, canvas.height],
          pixel: [...(context?.getImageData(Number(at), 20, 1, 1).data ?? [])],
        };
      },
      [here(name), x],
    );

  it("keeps the shape and never enlarges", async () => {
    expect((await thumbnail("halves", 20)).size).toEqual([120, 240]);
    expect((await thumbnail("noise", 20)).size).toEqual([187, 240]);
  });

  it("stays within its limit even for noise", async () => {
    const { characters } = await thumbnail("noise", 20);
    expect(characters).toBeLessThanOrEqual(await page.evaluate(() => Pixels.THUMBNAIL_LIMIT));
  });

  it("carries the colours that it is told to", async () => {
    const pixel = await page.evaluate(async (url) => {
      const file = await (await fetch(url)).blob();
      const image = new Image();
      image.src = await Pixels.thumbnailOf(file, (data) =>
        data.map((value, at) => (at % 4 < 3 ? 255 - value : value)),
      );
      await image.decode();
      const context = document.createElement("canvas").getContext("2d");
      context?.drawImage(image, 0, 0);
      return [...(context?.getImageData(20, 20, 1, 1).data ?? [])];
    }, here("halves"));
    for (const [at, value] of UPPER.entries()) {
      // JPEG keeps a flat colour to a few steps.
      expect(Math.abs((pixel[at] ?? 0) - (at < 3 ? 255 - value : value))).toBeLessThanOrEqual(4);
    }
  });

  it("puts white behind transparent parts", async () => {
    const { pixel } = await thumbnail("clear", 10);
    for (const channel of pixel) expect(channel).toBeGreaterThan(250);
  });

  it("makes one from a picture on the page where the page may read it", async () => {
    const answers = await page.evaluate(
      async (urls) =>
        Promise.all(
          urls.map(async (src) => {
            const image = Object.assign(new Image(), { src });
            await image.decode();
            return Pixels.thumbnailOfImage(image).then(
              (url) => url.slice(0, 16),
              (error) => String(error),
            );
          }),
        ),
      [here("halves"), there("shut/halves")],
    );
    expect(answers).toEqual([
      "data:image/jpeg;",
      "PictureError: The store does not let this picture be read.",
    ]);
  });
});
