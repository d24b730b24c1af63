import * as v from "valibot";
import type { GrantBrowser } from "./grant-browser.ts";

/** A store that was switched on, with the hosts its pictures come from, as granted. */
export interface Store {
  readonly imageOrigins: readonly string[];
  /** When the person asked for it; ms since 1970. */
  readonly since: number;
}

/** How long a store that was asked for may wait for the person's answer to the browser's question; ms. */
export const PENDING_MS = 10 * 60_000;

/** A grant names at most so many image hosts: what one listing uses, and few enough to read. */
export const IMAGE_ORIGINS_MAX = 12;

const originSchema = v.pipe(v.string(), v.regex(/^https?:\/\/[^/]+$/));
const storeSchema: v.GenericSchema<unknown, Store> = v.object({
  imageOrigins: v.pipe(v.array(originSchema), v.maxLength(IMAGE_ORIGINS_MAX)),
  since: v.number(),
});
const recordsSchema = v.record(v.string(), v.unknown());

/** The records that are in order; one that is not must not take the others with it. */
async function readStores(browser: GrantBrowser): Promise<Record<string, Store>> {
  const records = v.safeParse(recordsSchema, await browser.readStores());
  const stores: Record<string, Store> = {};
  for (const [origin, record] of Object.entries(records.success ? records.output : {})) {
    const store = v.safeParse(storeSchema, record);
    if (store.success && v.is(originSchema, origin)) stores[origin] = store.output;
  }
  return stores;
}

/** What a switched-on store was granted: its picture hosts that are still granted. Null for a store that is off. */
export async function grantOf(
  browser: GrantBrowser,
  origin: string,
): Promise<Pick<Store, "imageOrigins"> | null> {
  const store = (await readStores(browser))[origin];
  if (!store || !(await browser.isGranted([origin]))) return null;
  const held = await Promise.all(store.imageOrigins.map((host) => browser.isGranted([host])));
  return { imageOrigins: store.imageOrigins.filter((_, at) => held[at]) };
}

/** Notes that the person asked for this store; it counts once the browser grants it. Asking again adds picture hosts. */
export async function intendStore(
  browser: GrantBrowser,
  origin: string,
  imageOrigins: readonly string[],
  now: number,
): Promise<void> {
  const stores = await readStores(browser);
  const images = [...new Set([...imageOrigins, ...(stores[origin]?.imageOrigins ?? [])])].slice(
    0,
    IMAGE_ORIGINS_MAX,
  );
  await browser.writeStores({ ...stores, [origin]: { imageOrigins: images, since: now } });
}

/**
 * Makes what runs agree with what is granted: registers the page script for every granted store, takes it away where
 * the grant is gone, and ends the visits there. Called at every worker start, since the browser keeps grants over an
 * update but not registered scripts.
 * @returns origins that were newly switched on
 */
export async function reconcileStores(browser: GrantBrowser, now: number): Promise<readonly string[]> {
  const stores = await readStores(browser);
  const registered = await browser.registered();
  const on: Record<string, Store> = {};
  const waiting: Record<string, Store> = {};
  for (const [origin, store] of Object.entries(stores)) {
    if (await browser.isGranted([origin])) on[origin] = store;
    else if (!registered.includes(origin) && now - store.since < PENDING_MS) waiting[origin] = store;
  }
  const added = Object.keys(on).filter((origin) => !registered.includes(origin));
  const ended = registered.filter((origin) => !(origin in on));
  if (ended.length > 0) await browser.unregister(ended);
  if (added.length > 0) await browser.register(added);
  const kept = { ...on, ...waiting };
  if (Object.keys(kept).length !== Object.keys(stores).length) await browser.writeStores(kept);
  for (const origin of ended) await browser.stopPages(origin);
  return added;
}

/** Switches a store off: ends its visits, takes the script away and gives back what no other store needs. */
export async function switchStoreOff(browser: GrantBrowser, origin: string): Promise<void> {
  await browser.stopPages(origin);
  const { [origin]: store, ...others } = await readStores(browser);
  if (!store) return;
  await browser.writeStores(others);
  if ((await browser.registered()).includes(origin)) await browser.unregister([origin]);
  const needed = new Set(
    Object.entries(others).flatMap(([other, { imageOrigins }]) => [other, ...imageOrigins]),
  );
  await browser.giveBack([origin, ...store.imageOrigins].filter((host) => !needed.has(host)));
}
