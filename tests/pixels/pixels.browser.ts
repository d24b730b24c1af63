import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { bundle } from "../browser/bundle.ts";
import { openBrowser } from "../browser/open-browser.ts";
import { openServer, type PictureServer } from "./picture-server.ts";
import type * as Room from "./pixels-room.ts";
import { pngOf } from "./png-of.ts";

declare const Pixels: typeof Room;

/** Upper half and lower half of the picture; any colours would do. */
const UPPER = [200, 40, 60, 255] as const;
const LOWER = [20, 90, 160, 255] as const;
const halves = pngOf(120, 240, (_, y) => (y < 120 ? UPPER : LOWER));
const tiny = pngOf(24, 24, () => UPPER);
const clear = pngOf(100, 100, (x) => (x < 50 ? [0, 0, 0, 0] : UPPER));
const noise = pngOf(700, 900, (x, y) => {
  const n = Math.imul(x * 374761393 + y * 668265263, 1274126177) >>> 0;
  return [n & 255, (n >> 8) & 255, (n >> 16) & 255, 255];
});
const files: Record<string, Buffer> = { halves, tiny, clear, noise };

let browser: Browser;
let store: PictureServer;
let cdn: PictureServer;
let code: string;
let page: Page;

beforeAll(async () => {
  code = await bundle(new URL("./pixels-room.ts", import.meta.url).pathname, "Pixels");
  browser = await openBrowser();
  store = await openServer((path, response) => {
    const file = files[path.slice(1)];
    if (file) response.setHeader("content-type", "image/png").end(file);
    else response.setHeader("content-type", "text/html").end("<!doctype html><title>Store</title>");
  });
  cdn = await openServer((path, response) => {
    const [, rule, name] = (path.split("?")[0] ?? "").split("/");
    if (rule === "open") response.setHeader("access-control-allow-origin", "*");
    if (name === "endless") {
      response.setHeader("content-type", "image/png");
      const more = () => {
        while (!response.destroyed && response.write(Buffer.alloc(1 << 20)));
      };
      response.on("drain", more);
      more();
      return;
    }
    const file = files[name ?? ""];
    response.statusCode = file ? 200 : 404;
    response.setHeader("content-type", name === "halves" ? "image/png" : "text/plain").end(file ?? "no");
  });
});

afterAll(async () => {
  await browser?.close();
  await store?.close();
  await cdn?.close();
});

beforeEach(async () => {
  page = await browser.newPage();
  await page.goto(`http://shop.localhost:${store.port}/`);
  await page.addScriptTag({ content: code });
  cdn.seen.length = 0;
  return () => page.close();
});

const here = (name: string) => `http://shop.localhost:${store.port}/${name}`;
const there = (name: string) => `http://cdn.localhost:${cdn.port}/${name}`;

/** Reads a picture through the ladder and says by which way it came, with two pixels of it. */
function read(urls: string[]) {
  return page.evaluate(async (all) => {
    const reader = Pixels.pictureReader(new AbortController().signal);
    const answers: unknown[] = [];
    for (const url of all) {
      const image = new Image();
      image.src = url;
      document.body.append(image);
      const pick = (way: string, { data, width, height }: ReturnType<typeof Pixels.pixelsOfImage>) => [
        way,
        [...data.slice(0, 4)],
        [...data.slice((height - 1) * width * 4, (height - 1) * width * 4 + 4)],
      ];
      answers.push(
        await reader(
          { url, image },
          {
            ofImage: (shown) => pick("image", Pixels.pixelsOfImage(shown)),
            ofFile: async (file) => pick("file", await Pixels.pixelsOfBlob(file)),
            elsewhere: async (address) => ["elsewhere", address],
          },
        ).catch((error) => String(error)),
      );
    }
    return answers;
  }, urls);
}

describe("the ladder of ways to a picture's pixels", () => {
  it("draws a picture of the page's own origin and fetches nothing", async () => {
    const before = store.seen.length;
    expect(await read([here("halves")])).toEqual([["image", UPPER, LOWER]]);
    expect(store.seen.slice(before).map((request) => request.headers["sec-fetch-dest"])).toEqual(["image"]);
  });

  it("fetches a foreign picture that allows it, without cookies", async () => {
    await page.context().addCookies([{ name: "who", value: "me", url: there("") }]);
    expect(await read([there("open/halves")])).toEqual([["file", UPPER, LOWER]]);
    const fetched = cdn.seen.filter((request) => request.headers["sec-fetch-dest"] === "empty");
    expect(fetched.every((request) => !request.headers.cookie)).toBe(true);
  });

  it("hands over a foreign picture that forbids it, and afterwards spares that origin the vain tries", async () => {
    const second = `${there("shut/halves")}?2`;
    const fetched: string[] = [];
    await page.exposeFunction("note", (url: string) => fetched.push(url));
    await page.evaluate(
      "const real = window.fetch; window.fetch = (url, init) => (note(String(url)), real(url, init)); 0",
    );
    expect(await read([there("shut/halves"), second])).toEqual([
      ["elsewhere", there("shut/halves")],
      ["elsewhere", second],
    ]);
    expect(fetched).toEqual([there("shut/halves")]);
  });

  it("still draws the page's own pictures after a foreign one spoiled the canvas", async () => {
    expect(await read([there("shut/halves"), here("halves")])).toEqual([
      ["elsewhere", there("shut/halves")],
      ["image", UPPER, LOWER],
    ]);
  });

  it("turns down small and broken pictures with the reason", async () => {
    expect(await read([here("tiny"), there("open/none")])).toEqual([
      "PictureError: The picture is too small to judge its colours.",
      "PictureError: The picture did not load.",
    ]);
  });

  it("gives a readable canvas to point at, or refuses where no pixels may be had", async () => {
    const answers = await page.evaluate(
      async (all) => {
        const reader = Pixels.pictureReader(new AbortController().signal);
        const read = async (url: string) => {
          const image = new Image();
          image.src = url;
          const canvas = await reader({ url, image }, Pixels.asCanvas);
          return [
            canvas.width,
            canvas.height,
            ...(canvas.getContext("2d")?.getImageData(5, 5, 1, 1).data ?? []),
          ];
        };
        return Promise.all(all.map((url) => read(url).catch((error) => String(error))));
      },
      [here("halves"), there("open/halves"), there("shut/halves")],
    );
    expect(answers).toEqual([
      [120, 240, ...UPPER],
      [120, 240, ...UPPER],
      "PictureError: The store does not let this picture be read.",
    ]);
  });
});

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
