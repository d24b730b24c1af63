// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { visit } from "../../lib/visit/visit.ts";
import { fakeStore, RED, tile } from "./fake-store.ts";

let store: ReturnType<typeof fakeStore>;

const words = () => store.faces().map((face) => face.querySelector(".words")?.textContent);
const settled = (texts: readonly string[]) => vi.waitFor(() => expect(words()).toEqual(texts));
/** Another store instead of the usual one. */
const replaceStore = (...args: Parameters<typeof fakeStore>) => {
  store.ended.abort();
  vi.restoreAllMocks();
  store = fakeStore(...args);
};
const start = () => visit(store.deps, store.readers);

beforeEach(() => {
  store = fakeStore([tile("a"), tile("b"), tile("c")]);
});

afterEach(() => {
  store.ended.abort();
  document.body.replaceChildren();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe("a visit", () => {
  it("shows a badge on every product, asking once for all", async () => {
    await start();
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
    expect(store.requests("recall")).toHaveLength(1);
    expect(store.requests("judge").map(({ candidates }) => candidates.map(({ title }) => title))).toEqual([
      ["a", "b", "c"],
    ]);
  });

  it("publishes the page at a glance, from finding to done", async () => {
    await start();
    await vi.waitFor(() => expect(store.summaries.at(-1)?.state).toBe("done"));
    const last = store.summaries.at(-1);
    expect(last?.kind).toBe("listing");
    expect(last?.products.map(({ brief, image }) => [brief?.headline, image])).toEqual([
      ["Verdict on a", "http://shop.localhost/i/a.jpg"],
      ["Verdict on b", "http://shop.localhost/i/b.jpg"],
      ["Verdict on c", "http://shop.localhost/i/c.jpg"],
    ]);
    const { found, firstBadge, lastBadge } = last?.timings ?? {};
    expect([found, firstBadge, lastBadge].every((time) => typeof time === "number")).toBe(true);
    expect(Number(found)).toBeLessThanOrEqual(Number(firstBadge));
    expect(Number(firstBadge)).toBeLessThanOrEqual(Number(lastBadge));
  });

  it("reads a picture only when it comes near the screen", async () => {
    const image = document.querySelectorAll("img")[2];
    if (image) store.far.add(image);
    await start();
    await settled(["Verdict on a", "Verdict on b"]);
    store.far.clear();
    store.comeNear();
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
  });

  it("reads at most four pictures at a time", async () => {
    document.body.append(...Array.from({ length: 9 }, (_, n) => tile(`more${n}`)));
    let reading = 0;
    let most = 0;
    store.readers.readPalette.mockImplementation(async () => {
      most = Math.max(most, ++reading);
      await new Promise((done) => setTimeout(done, 2));
      reading -= 1;
      return RED;
    });
    await start();
    await vi.waitFor(() => expect(store.readers.readPalette).toHaveBeenCalledTimes(12));
    expect(most).toBe(4);
  });

  it("says on the badge why a picture cannot be read, and compares the others", async () => {
    const reason = "The store does not let this picture be read.";
    store.readers.readPalette.mockImplementation(async ({ title }) =>
      title === "b" ? { swatches: [], confidence: 0, evidence: [], reason } : RED,
    );
    await start();
    await settled(["Verdict on a", "Can't read this picture", "Verdict on c"]);
    const unreadable = store.buttons()[1];
    expect(store.faces()[1]?.ariaLabel).toContain(reason);
    expect(unreadable?.dataset.state).toBe("unreadable");
  });

  it("says on the badge when the worker gives no answer", async () => {
    replaceStore([tile("a")], {
      judge: () => {
        throw new Error("Hueward did not answer. Try again in a moment.");
      },
    });
    await start();
    await settled(["Hueward did not answer. Try again in a moment."]);
  });

  it("says on the badge why its card does not open, to all and out of reach of a page's search", async () => {
    await start();
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
    const [button] = store.buttons();
    button?.dispatchEvent(Object.assign(new MouseEvent("click"), { isTrusted: true }));
    store.subjects[0]?.fail("No answer came.");
    expect(button?.title).toBe("No answer came.");
    const [face] = store.faces();
    expect(face?.ariaLabel).toBe("Can't open now. No answer came.. crimson. a");
    expect([...(face?.childNodes ?? [])].map((part) => (part as HTMLElement).inert)).toEqual([true, true]);
  });

  it("compares again when the closet changes, without reading again", async () => {
    await start();
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
    store.changeCloset();
    await vi.waitFor(() => expect(store.requests("judge")).toHaveLength(2));
    expect(store.requests("judge")[1]?.candidates).toHaveLength(3);
    expect(store.readers.readPalette).toHaveBeenCalledTimes(3);
  });

  it("leaves no trace when it ends, and stays silent", async () => {
    await start();
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
    store.ended.abort();
    expect(store.hosts()).toEqual([]);
    const { asked, summaries } = store;
    const before = [asked.length, summaries.length];
    document.body.append(tile("late"));
    await new Promise((done) => setTimeout(done, 400));
    expect([asked.length, summaries.length]).toEqual(before);
    expect(document.body.innerHTML).not.toContain("hueward");
  });

  it("changes no attribute of the page's own elements", async () => {
    const before = document.body.innerHTML;
    await start();
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
    store.ended.abort();
    expect(document.body.innerHTML).toBe(before);
  });
});

describe("what is remembered", () => {
  it("is not read again, and a person's word wins over the picture", async () => {
    const green = { oklab: [0.5, -0.1, 0.05] as const, share: 1 };
    replaceStore([tile("a"), tile("b")], {
      recall: () => ({
        slots: {},
        corrections: { "http://shop.localhost/p/a": [green] },
        palettes: { "http://shop.localhost/i/a.jpg": RED, "http://shop.localhost/i/b.jpg": RED },
      }),
    });
    await start();
    await settled(["Verdict on a", "Verdict on b"]);
    expect(store.readers.readPalette).not.toHaveBeenCalled();
    const palettes = store
      .requests("judge")
      .flatMap(({ candidates }) => candidates.map(({ palette }) => palette));
    expect(palettes).toEqual([{ swatches: [green], confidence: 1, evidence: ["person"] }, RED]);
    expect(store.requests("remember")).toEqual([]);
  });

  it("is what was read from pictures with an address", async () => {
    await start();
    await vi.waitFor(() => expect(store.requests("remember")).toHaveLength(1));
    expect(store.requests("remember")[0]?.entries).toEqual(
      ["a", "b", "c"].map((name) => ({ picture: `http://shop.localhost/i/${name}.jpg`, palette: RED })),
    );
  });

  it("does not keep pictures from being read when it is out of reach", async () => {
    replaceStore([tile("a")], {
      recall: () => {
        throw new Error("gone");
      },
    });
    await start();
    await settled(["Verdict on a"]);
  });
});

describe("a person's word on a colour", () => {
  const open = async () => {
    await start();
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
    const [button] = store.buttons();
    // Only a browser makes trusted events; here one is dressed up as such.
    button?.dispatchEvent(Object.defineProperty(new Event("click"), "isTrusted", { value: true }));
    return store.subjects[0];
  };

  it("is sent first, counts at once and is certain", async () => {
    const subject = await open();
    const said = [{ oklab: [0.4, 0, -0.1] as const, share: 1 }];
    await subject?.correct(said);
    expect(store.requests("correct")).toEqual([{ productKey: "http://shop.localhost/p/a", swatches: said }]);
    const [candidate] = store.requests("judge").at(-1)?.candidates ?? [];
    expect(candidate?.palette).toEqual({ swatches: said, confidence: 1, evidence: ["person"] });
    expect(subject?.candidate().palette.swatches).toEqual(said);
  });

  it("is forgotten on request, and the picture is read again", async () => {
    const subject = await open();
    await subject?.correct([{ oklab: [0.4, 0, -0.1], share: 1 }]);
    store.readers.readPalette.mockClear();
    await subject?.correct([]);
    expect(store.readers.readPalette).toHaveBeenCalledTimes(1);
    expect(subject?.candidate().palette).toEqual(RED);
  });

  it("takes no word from a script of the page", async () => {
    await start();
    await settled(["Verdict on a", "Verdict on b", "Verdict on c"]);
    store.buttons()[0]?.click();
    expect(store.subjects).toEqual([]);
  });
});
