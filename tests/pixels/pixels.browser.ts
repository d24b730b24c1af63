import { describe, expect, it } from "vitest";
import { cdn, here, LOWER, page, store, there, UPPER } from "./pixels-page.ts";
import type * as Room from "./pixels-room.ts";

declare const Pixels: typeof Room;

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
    const all = [1, 2, 3, 4, 5].map((n) => `${there("shut/halves")}?${n}`);
    const fetched: string[] = [];
    await page.exposeFunction("note", (url: string) => fetched.push(url));
    await page.evaluate(
      "const real = window.fetch; window.fetch = (url, init) => (note(String(url)), real(url, init)); 0",
    );
    expect(await read(all)).toEqual(all.map((url) => ["elsewhere", url]));
    expect(fetched).toEqual(all.slice(0, 3));
  });

  it("goes on trying a way that worked for some pictures of an origin", async () => {
    const rules = ["shut", "open", "shut", "shut", "shut", "open"];
    const ways = (await read(rules.map((rule, n) => `${there(`${rule}/halves`)}?${n}`))) as string[][];
    expect(ways.map(([way]) => way)).toEqual(rules.map((rule) => (rule === "open" ? "file" : "elsewhere")));
  });

  it("still draws the page's own pictures after a foreign one spoiled the canvas", async () => {
    expect(await read([there("shut/halves"), here("halves")])).toEqual([
      ["elsewhere", there("shut/halves")],
      ["image", UPPER, LOWER],
    ]);
  });

  it("turns down small, huge and broken pictures with the reason", async () => {
    expect(await read([here("tiny"), here("huge"), there("open/none")])).toEqual([
      "PictureError: The picture is too small to judge its colours.",
      "PictureError: The picture is too large to read.",
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
