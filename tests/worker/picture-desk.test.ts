import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { pictureDesk } from "../../lib/worker/picture-desk.ts";

const PAGE = "https://shop.example/dresses";
const PICTURE = "https://cdn.example/i/skirt.jpg";
const NO_HINTS = { slot: null, text: "" };

/** A desk of a person who switched on shop.example with its pictures on cdn.example. */
function desk() {
  const granted = new Set(["https://shop.example", "https://cdn.example"]);
  return pictureDesk(
    async (origins) => origins.every((origin) => granted.has(origin)),
    new AbortController().signal,
  );
}

describe("the pictures a worker fetches for pages", () => {
  const fetched = vi.fn<typeof fetch>(async () => new Response("", { status: 404 }));
  beforeEach(() => {
    fetched.mockClear();
    vi.stubGlobal("fetch", fetched);
  });
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  it("are those of a switched-on store, asked for without cookie, page or way on to another address", async () => {
    const { reason } = await desk().read(PICTURE, NO_HINTS, PAGE);
    expect(reason).toBe("The picture did not load.");
    expect(fetched).toHaveBeenCalledExactlyOnceWith(
      PICTURE,
      expect.objectContaining({ credentials: "omit", referrerPolicy: "no-referrer", redirect: "error" }),
    );
  });

  it.each([
    ["a store that is off", PICTURE, "https://other.example/dresses"],
    ["a host that its grant does not name", "https://elsewhere.example/i.jpg", PAGE],
    ["a router at home", "http://192.168.1.1/reboot", PAGE],
    ["this machine", "http://localhost:8080/i.jpg", PAGE],
    ["the same host without encryption", "http://cdn.example/i.jpg", PAGE],
    ["the extension itself", PICTURE, "chrome-extension://hueward/closet.html"],
    ["nobody in particular", PICTURE, ""],
    ["no picture's address", "data:image/svg+xml,<svg/>", PAGE],
  ])("are none of %s", async (_, url, page) => {
    const { reason, swatches } = await desk().read(url, NO_HINTS, page);
    expect([reason, swatches]).toEqual([expect.stringContaining("not allowed yet"), []]);
    expect(await desk().thumbnail(url, page)).toBeNull();
    expect(fetched).not.toHaveBeenCalled();
  });

  it("need no fetching where the page sent one that can be kept, and are left out where it cannot", async () => {
    const small = "data:image/jpeg;base64,AAAA";
    expect(await desk().thumbnail(small, PAGE)).toBe(small);
    for (const odd of ["data:image/svg+xml;base64,AAAA", "data:text/html,x", `${small}${"A".repeat(60_000)}`])
      expect(await desk().thumbnail(odd, PAGE)).toBeNull();
    expect(fetched).not.toHaveBeenCalled();
  });
});
