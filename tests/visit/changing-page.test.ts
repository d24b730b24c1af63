// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { MOST_ATTACHMENTS } from "../../lib/badge/badge.ts";
import { visit } from "../../lib/visit/visit.ts";
import { fakeStore, tile } from "./fake-store.ts";

let store: ReturnType<typeof fakeStore>;

const words = () => store.faces().map((face) => face.querySelector(".words")?.textContent);
const settled = (texts: readonly string[]) => vi.waitFor(() => expect(words()).toEqual(texts));

afterEach(() => {
  store.ended.abort();
  document.body.replaceChildren();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe("a page that changes", () => {
  const named = (name: string) =>
    [...document.querySelectorAll("article")].find((root) => root.textContent === name);

  beforeEach(async () => {
    store = fakeStore([tile("a"), tile("b"), tile("c")]);
    await visit(store.deps, store.readers);
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
  });

  it("gets badges on what it adds, and only the added nodes are read", async () => {
    const added = tile("d");
    document.body.append(added);
    await settled(["Verdict on a", "Verdict on b", "Verdict on c", "Verdict on d"]);
    expect(store.readers.readPage).toHaveBeenCalledTimes(1);
    expect(store.readers.readAdded.mock.calls.map(([, elements]) => elements)).toEqual([[added]]);
    expect(store.readers.readPalette).toHaveBeenCalledTimes(4);
  });

  it("loses the badges of what it takes away", async () => {
    named("b")?.remove();
    await vi.waitFor(() => expect(store.summaries.at(-1)?.products).toHaveLength(2));
    expect(words()).toEqual(["Verdict on a", "Verdict on c"]);
  });

  it("gets the badge of the product that a tile shows now", async () => {
    const root = named("a");
    const link = root?.querySelector("a");
    const image = root?.querySelector("img");
    if (!link?.lastChild || !image) throw new Error("no tile");
    link.href = "http://shop.localhost/p/z";
    link.lastChild.textContent = "z";
    image.src = "http://shop.localhost/i/z.jpg";
    await settled(["Verdict on z", "Verdict on b", "Verdict on c"]);
    expect(store.hosts()).toHaveLength(3);
    expect(
      store
        .requests("judge")
        .at(-1)
        ?.candidates.map(({ key }) => key),
    ).toEqual(["http://shop.localhost/p/z"]);
  });

  it("reads the other picture of a product that shows another", async () => {
    const image = named("a")?.querySelector("img");
    if (image) image.src = "http://shop.localhost/i/a-back.jpg";
    await vi.waitFor(() =>
      expect(store.readers.readPalette.mock.lastCall?.[2].url).toBe("http://shop.localhost/i/a-back.jpg"),
    );
    expect(store.readers.readPalette).toHaveBeenCalledTimes(4);
  });

  it("gets a dropped badge back, but not for ever", async () => {
    const [host] = store.hosts();
    let comebacks = 0;
    for (let round = 0; round < MOST_ATTACHMENTS; round++) {
      host?.remove();
      await vi
        .waitFor(() => expect(host?.isConnected).toBe(true), { timeout: 400 })
        .then(
          () => comebacks++,
          () => undefined,
        );
    }
    expect(comebacks).toBe(MOST_ATTACHMENTS - 1);
  });

  it("takes back at once what it says of a tile that is filled with another product", async () => {
    const root = named("a");
    const link = root?.querySelector("a");
    const image = root?.querySelector("img");
    if (!link || !image) throw new Error("no tile");
    link.href = "http://shop.localhost/p/z";
    image.src = "http://shop.localhost/i/z.jpg";
    // What watches the page is told before the browser draws.
    await Promise.resolve();
    await Promise.resolve();
    expect(words()).toEqual(["Reading the picture", "Verdict on b", "Verdict on c"]);
  });

  it("says the same at once of a product that is drawn anew, without asking first", async () => {
    const again = tile("b");
    store.far.add(again.querySelector("img") as Element);
    named("b")?.replaceWith(again);
    await vi.waitFor(() => expect(store.readers.readAdded).toHaveBeenCalledTimes(1));
    await settled(["Verdict on a", "Verdict on c", "Verdict on b"]);
    expect(store.requests("judge")).toHaveLength(1);
  });

  it("says nothing at once of a product that is drawn anew with another picture", async () => {
    const again = tile("b");
    const image = again.querySelector("img");
    if (!image) throw new Error("no picture");
    image.src = "http://shop.localhost/i/b-back.jpg";
    store.far.add(image);
    named("b")?.replaceWith(again);
    await vi.waitFor(() => expect(store.summaries.at(-1)?.products).toHaveLength(3));
    expect(words()).toEqual(["Verdict on a", "Verdict on c"]);
  });

  it("wears one badge on a picture that stands for another product now", async () => {
    const [other, picture] = [tile("z"), named("a")?.querySelector("img")];
    if (!picture) throw new Error("no picture");
    other.querySelector("img")?.replaceWith(picture);
    document.body.append(other);
    await settled(["Verdict on b", "Verdict on c", "Verdict on z"]);
  });

  it("compares again when it comes back out of the browser's memory", async () => {
    window.dispatchEvent(Object.assign(new Event("pageshow"), { persisted: false }));
    window.dispatchEvent(Object.assign(new Event("pageshow"), { persisted: true }));
    await vi.waitFor(() => expect(store.requests("judge")).toHaveLength(2));
  });
});

describe("a page whose reader did not come", () => {
  it("is read when it changes next", async () => {
    store = fakeStore([tile("a")]);
    store.readers.readPage.mockImplementationOnce(() => {
      throw new Error("No answer came.");
    });
    await expect(visit(store.deps, store.readers)).rejects.toThrow("No answer came.");
    expect(store.buttons()).toEqual([]);
    document.body.append(document.createElement("p"));
    await settled(["Verdict on a"]);
  });
});

describe("a page whose follower did not come", () => {
  it("asks for it again when it changes next, and has lost nothing", async () => {
    store = fakeStore([]);
    await visit(store.deps, store.readers);
    const { follow } = store.readers;
    let attempts = 0;
    store.readers.follow = async (deps) => {
      attempts += 1;
      if (attempts === 1) throw new Error("No answer came.");
      return follow(deps);
    };
    const lost: unknown[] = [];
    const note = (reason: unknown) => lost.push(reason);
    process.on("unhandledRejection", note);
    document.body.append(tile("a"));
    await vi.waitFor(() => expect(lost).toEqual([new Error("No answer came.")]));
    process.off("unhandledRejection", note);
    expect(store.buttons()).toEqual([]);
    document.body.append(tile("b"));
    await settled(["Verdict on a", "Verdict on b"]);
    expect(attempts).toBe(2);
  });
});

describe("a product that breaks what follows it", () => {
  it("is told of, and the others have their badges", async () => {
    const told = vi.fn();
    vi.stubGlobal("reportError", told);
    const broken = tile("b");
    const failure = new Error("broken");
    Object.defineProperty(broken.querySelector("img"), "currentSrc", {
      get() {
        throw failure;
      },
    });
    store = fakeStore([tile("a"), broken, tile("c")]);
    await visit(store.deps, store.readers);
    await settled(["Verdict on a", "Verdict on c"]);
    expect(told.mock.calls).toEqual([[failure]]);
  });
});

describe("a picture that came too late to be read", () => {
  it("is read then", async () => {
    store = fakeStore([tile("a")]);
    const unread = { swatches: [], confidence: 0, evidence: [], reason: "The picture took too long." };
    store.readers.readPalette.mockResolvedValueOnce(unread);
    await visit(store.deps, store.readers);
    await settled(["Can't read this picture"]);
    document.querySelector("img")?.dispatchEvent(new Event("load"));
    await settled(["Verdict on a"]);
    document.querySelector("img")?.dispatchEvent(new Event("load"));
    await new Promise((done) => setTimeout(done, 200));
    expect(store.readers.readPalette).toHaveBeenCalledTimes(2);
  });
});
