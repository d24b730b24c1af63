import { describe, expect, it } from "vitest";
import type { GrantBrowser } from "../../lib/worker/grant-browser.ts";
import {
  grantOf,
  intendStore,
  PENDING_MS,
  reconcileStores,
  switchStoreOff,
} from "../../lib/worker/stores.ts";

const shop = "https://shop.example";
const other = "https://other.example";
const cdn = "https://cdn.example";

/** A browser that keeps grants, registrations and records as the real ones do. */
function fakeBrowser() {
  const state = {
    records: undefined as unknown,
    granted: new Set<string>(),
    scripts: new Set<string>(),
    stopped: [] as string[],
  };
  const browser: GrantBrowser = {
    readStores: async () => structuredClone(state.records),
    writeStores: async (stores) => {
      state.records = structuredClone(stores);
    },
    onStoresChange: () => undefined,
    isGranted: async (origins) => origins.every((origin) => state.granted.has(origin)),
    giveBack: async (origins) => {
      for (const origin of origins) state.granted.delete(origin);
    },
    registered: async () => [...state.scripts],
    register: async (origins) => {
      for (const origin of origins) {
        if (state.scripts.has(origin)) throw new Error(`Duplicate script ID '${origin}'`);
        state.scripts.add(origin);
      }
    },
    unregister: async (origins) => {
      for (const origin of origins) {
        if (!state.scripts.delete(origin)) throw new Error(`Nonexistent script ID '${origin}'`);
      }
    },
    runInOpenTabs: async () => undefined,
    stopPages: async (origin) => void state.stopped.push(origin),
  };
  return { browser, state };
}

describe("switching stores on and off", () => {
  it("registers a store once it is both asked for and granted, in either order", async () => {
    const { browser, state } = fakeBrowser();
    await intendStore(browser, shop, [cdn], 0);
    expect(await reconcileStores(browser, 1)).toEqual([]);
    state.granted.add(shop).add(cdn);
    expect(await reconcileStores(browser, 2)).toEqual([shop]);
    expect(await reconcileStores(browser, 3)).toEqual([]);
    expect([...state.scripts]).toEqual([shop]);
  });

  it("never runs on a picture host or on a grant that nobody asked for here", async () => {
    const { browser, state } = fakeBrowser();
    state.granted.add(shop).add(cdn).add(other);
    await intendStore(browser, shop, [cdn], 0);
    await reconcileStores(browser, 1);
    expect([...state.scripts]).toEqual([shop]);
  });

  it("registers again what the browser forgot over an update", async () => {
    const { browser, state } = fakeBrowser();
    state.granted.add(shop);
    await intendStore(browser, shop, [], 0);
    await reconcileStores(browser, 1);
    state.scripts.clear();
    expect(await reconcileStores(browser, 2)).toEqual([shop]);
  });

  it("ends the visits when the grant is taken back in the browser's own settings", async () => {
    const { browser, state } = fakeBrowser();
    state.granted.add(shop);
    await intendStore(browser, shop, [cdn], 0);
    await reconcileStores(browser, 1);
    state.granted.delete(shop);
    await reconcileStores(browser, 2);
    expect(state).toMatchObject({ stopped: [shop], records: {} });
    expect(state.scripts.size).toBe(0);
  });

  it("forgets a store whose question was never answered", async () => {
    const { browser, state } = fakeBrowser();
    await intendStore(browser, shop, [], 0);
    await reconcileStores(browser, PENDING_MS - 1);
    expect(state.records).toHaveProperty([shop]);
    await reconcileStores(browser, PENDING_MS);
    expect(state.records).toEqual({});
  });

  it("gives back only what no other store needs", async () => {
    const { browser, state } = fakeBrowser();
    for (const origin of [shop, other, cdn]) state.granted.add(origin);
    await intendStore(browser, shop, [cdn, "https://own-cdn.example"], 0);
    state.granted.add("https://own-cdn.example");
    await intendStore(browser, other, [cdn], 0);
    await reconcileStores(browser, 1);
    await switchStoreOff(browser, shop);
    expect([...state.granted].sort()).toEqual([cdn, other]);
    expect([...state.scripts]).toEqual([other]);
    expect(state.stopped).toEqual([shop]);
    await switchStoreOff(browser, other);
    expect(state.granted.size).toBe(0);
  });

  it("ends a visit that ran on one page only, without a record", async () => {
    const { browser, state } = fakeBrowser();
    await switchStoreOff(browser, shop);
    expect(state.stopped).toEqual([shop]);
  });

  it("survives records that are not its own", async () => {
    const { browser, state } = fakeBrowser();
    state.records = { "javascript:alert(1)": { imageOrigins: "all" } };
    expect(await reconcileStores(browser, 1)).toEqual([]);
    await intendStore(browser, shop, [cdn], 0);
    expect(state.records).toEqual({ [shop]: { imageOrigins: [cdn], since: 0 } });
  });

  it("keeps the stores that are in order beside a record that is not", async () => {
    const { browser, state } = fakeBrowser();
    for (const origin of [shop, other]) state.granted.add(origin);
    state.records = { [shop]: { imageOrigins: [cdn], since: 0 }, [other]: { imageOrigins: "all", since: 0 } };
    expect(await reconcileStores(browser, 1)).toEqual([shop]);
    expect([...state.scripts]).toEqual([shop]);
  });
});

describe("what a store was granted", () => {
  it("is nothing until it is asked for and granted", async () => {
    const { browser, state } = fakeBrowser();
    expect(await grantOf(browser, shop)).toBeNull();
    await intendStore(browser, shop, [cdn], 0);
    expect(await grantOf(browser, shop)).toBeNull();
    state.granted.add(shop).add(cdn);
    expect(await grantOf(browser, shop)).toEqual({ imageOrigins: [cdn] });
    expect(await grantOf(browser, other)).toBeNull();
  });

  it("leaves out a picture host whose grant was taken back, and is nothing without the store's own", async () => {
    const { browser, state } = fakeBrowser();
    state.granted.add(shop);
    await intendStore(browser, shop, [cdn], 0);
    expect(await grantOf(browser, shop)).toEqual({ imageOrigins: [] });
    state.granted.delete(shop);
    expect(await grantOf(browser, shop)).toBeNull();
  });

  it("is nothing where the record is not in order", async () => {
    const { browser, state } = fakeBrowser();
    state.granted.add(shop);
    for (const record of [{ imageOrigins: ["file:///etc"], since: 0 }, { imageOrigins: [cdn] }, null, "on"]) {
      state.records = { [shop]: record };
      expect(await grantOf(browser, shop)).toBeNull();
    }
  });
});
