import * as v from "valibot";
import { originOf } from "../../link/origin-of.ts";
import { IMAGE_ORIGINS_MAX } from "../../worker/stores.ts";

const countedSchema = v.array(v.tuple([v.string(), v.number()]));

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
    if (origin && origin !== storeOrigin) counts.set(origin, (counts.get(origin) ?? 0) + count);
  }
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .slice(0, IMAGE_ORIGINS_MAX)
    .map(([origin]) => origin);
}

/** "cdn.example" of "https://cdn.example": how an origin is said to a person. */
export const hostOf = (origin: string): string => origin.replace(/^https?:\/\//, "");
