import { describe, expect, it } from "vitest";
import { PAGE_REQUESTS, type WorkerRequestName } from "../../lib/link/messages.ts";
import { requestSchemas } from "../../lib/link/request-schemas.ts";
import { createServer, type Handlers } from "../../lib/link/serve.ts";

const self = { id: "hueward", origin: "chrome-extension://hueward" };
const page = { id: "hueward", tab: { id: 1 }, url: "https://shop.example/dresses" };
const own = { id: "hueward", tab: { id: 2 }, url: "chrome-extension://hueward/closet.html" };

/** Handlers that note what reached them. */
function noting() {
  const reached: { name: string; request: unknown }[] = [];
  const names = Object.keys(requestSchemas) as WorkerRequestName[];
  const entries = names.map((name) => [
    name,
    async (request: unknown) => {
      reached.push({ name, request });
      return null;
    },
  ]);
  return { reached, answer: createServer(Object.fromEntries(entries) as Handlers, self) };
}

const ask = (name: string, request: unknown) => ({ to: "worker", ask: name, request });

describe("the worker's listener", () => {
  it("leaves messages alone that are not for it", () => {
    const { answer } = noting();
    for (const other of [
      null,
      undefined,
      7,
      "judge",
      {},
      { to: "page", stop: "https://a" },
      { to: "worker" },
    ]) {
      expect(answer(other, page)).toBeNull();
    }
  });

  it("answers a store page exactly the requests that are listed for it", async () => {
    const { answer } = noting();
    for (const name of Object.keys(requestSchemas)) {
      const reply = await answer(ask(name, {}), page);
      const refusedOutright = reply?.ok === false && reply.error === "This request is not answered here.";
      expect(refusedOutright, name).toBe(!PAGE_REQUESTS.some((allowed) => allowed === name));
    }
  });

  it("answers its own pages everything, and other extensions nothing", async () => {
    const { answer, reached } = noting();
    expect(await answer(ask("switchOff", { origin: "https://shop.example" }), own)).toEqual({
      ok: true,
      value: null,
    });
    expect(reached).toEqual([{ name: "switchOff", request: { origin: "https://shop.example" } }]);
    const stranger = await answer(ask("recall", { products: [], pictures: [] }), { ...own, id: "other" });
    expect(stranger?.ok).toBe(false);
    expect(reached).toHaveLength(1);
  });

  it("is not fooled by an address that only begins like its own", async () => {
    const { answer, reached } = noting();
    const lookalike = { ...page, url: "chrome-extension://hueward.example/closet.html" };
    expect((await answer(ask("switchOff", { origin: "https://shop.example" }), lookalike))?.ok).toBe(false);
    expect(reached).toHaveLength(0);
  });

  it("refuses names that live on every object, and requests of the wrong shape, naming the place", async () => {
    const { answer, reached } = noting();
    for (const name of ["constructor", "__proto__", "toString"]) {
      expect((await answer(ask(name, {}), own))?.ok, name).toBe(false);
    }
    const wrong = await answer(ask("readPicture", { url: "file:///etc/passwd", slot: null, text: "" }), own);
    expect(wrong).toMatchObject({ ok: false, error: expect.stringContaining("url") });
    expect(reached).toHaveLength(0);
  });

  it("turns a handler's failure into its sentence", async () => {
    const { answer } = noting();
    const failing = createServer(
      {
        ...({} as Handlers),
        dropWish: async () => {
          throw new Error("The wishlist could not be written.");
        },
      },
      self,
    );
    expect(await failing(ask("dropWish", { id: "x" }), page)).toEqual({
      ok: false,
      error: "The wishlist could not be written.",
    });
    expect(await answer(ask("dropWish", { id: "x" }), page)).toEqual({ ok: true, value: null });
  });
});
