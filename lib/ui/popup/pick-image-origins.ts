import * as v from "valibot";
import { originOf } from "../../link/origin-of.ts";
import { IMAGE_ORIGINS_MAX } from "../../worker/stores.ts";

const countedSchema = v.array(v.tuple([v.string(), v.number()]));

/** Names of this machine, of a home or office network, and bare numbers: no host that serves a public store's pictures. */
const LOCAL = /^(?:\[.*\]|[\d.]+|[^.]+|.*\.(?:localhost|local|internal))$/i;

/**
 * The hosts worth asking for beside the store's own: those that serve most pictures first, at most as many as one
 * grant may name.
 * @param counted what `imageOriginsOnPage` gave, unchecked; anything else counts as no picture
 * @param storeOrigin "https://host" of the page
 */
export function pickImageOrigins(counted: unknown, storeOrigin: string): readonly string[] {
  const parsed = v.safeParse(countedSchema, counted);
  if (!parsed.success) return [];
  const counts = new Map<string, number>();
  for (const [address, count] of parsed.output) {
    const origin = originOf(address);
    if (origin && mayBeAskedFor(origin, storeOrigin)) counts.set(origin, (counts.get(origin) ?? 0) + count);
  }
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .slice(0, IMAGE_ORIGINS_MAX)
    .map(([origin]) => origin);
}

/** "cdn.example" of "https://cdn.example": how an origin is said to a person. */
export const hostOf = (origin: string): string => origin.replace(/^https?:\/\//, "");

/** Whether a picture host is another than the store's own and may belong to it: none of a private network to a public store. */
export function mayBeAskedFor(origin: string, storeOrigin: string): boolean {
  return origin !== storeOrigin && (isLocal(storeOrigin) || !isLocal(origin));
}

const isLocal = (origin: string): boolean => LOCAL.test(hostOf(origin));
