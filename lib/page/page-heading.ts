import { headingText } from "./plain-text.ts";

/** Characters; a heading that says what a page is about has fewer. */
const LONGEST_HEADING = 40;

/** What the main heading says that a page is about, in lower case; "" where it has none or a longer one. */
export function pageHeading(doc: Document): string {
  const [heading] = doc.getElementsByTagName("h1");
  const text = heading ? headingText(heading).toLowerCase() : "";
  return text.length < LONGEST_HEADING ? text : "";
}

/** The path of an address in lower case, with the route that a single script is told; "" where it is none. */
export function pathOf(address: string | null): string {
  const url = URL.parse(address ?? "");
  const route = url?.searchParams.get("route");
  return `${url?.pathname ?? ""}${route ? `/${route}` : ""}`.toLowerCase();
}
