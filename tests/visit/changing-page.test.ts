// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { MOST_ATTACHMENTS } from "../../lib/badge/badge.ts";
import { visit } from "../../lib/visit/visit.ts";
import { fakeStore, tile } from "./fake-store.ts";

let store: ReturnType<typeof fakeStore>;

const words = () => store.buttons().map((button) => button.querySelector(".words")?.textContent);
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
});
