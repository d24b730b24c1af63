import { originOf } from "../../link/origin-of.ts";
import { mayBeAskedFor } from "./pick-image-origins.ts";
import type { PopupFacts } from "./popup-state.ts";
import { isUnread } from "./rank-products.ts";

/** Hosts of pictures that could not be read and that a switched-on store's grant does not name. */
export function ungrantedOrigins({ grant, summary, origin }: PopupFacts): readonly string[] {
  if (!grant || !summary || origin === null) return [];
  const missing = new Set<string>();
  for (const { image } of summary.products.filter(isUnread)) {
    const host = image ? originOf(image) : null;
    if (host && mayBeAskedFor(host, origin) && !grant.imageOrigins.includes(host)) missing.add(host);
  }
  return [...missing];
}
