/**
 * "https://host" of an address, without port and path: what a store is known by, and what a grant names
 * (match patterns of the WebExtensions standard have no port in every browser). Null for anything but http(s).
 */
export function originOf(address: string): string | null {
  if (!URL.canParse(address)) return null;
  const url = new URL(address);
  return url.protocol === "http:" || url.protocol === "https:" ? `${url.protocol}//${url.hostname}` : null;
}

/** The match pattern that grants every page and picture of an origin. */
export const patternOf = (origin: string): string => `${origin}/*`;
