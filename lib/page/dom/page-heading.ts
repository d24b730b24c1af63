import { headingText } from "./plain-text.ts";

/** Characters; a heading that says what a page is about has fewer. */
const LONGEST_HEADING = 40;

/** What the main heading says that a page is about, in lower case; "" where it has none or a longer one. */
export function pageHeading(doc: Document): string {
  const [heading] = doc.getElementsByTagName("h1");
  const text = heading ? headingText(heading).toLowerCase() : "";
  return text.length < LONGEST_HEADING ? text : "";
}

/** What a script for all pages calls the page that it is to show. */
const ROUTES = ["route", "site", "page", "seite", "action", "view"];

/** The path of an address in lower case; "" where it is none. */
export const pathOf = (address: string | null): string =>
  URL.parse(address ?? "")?.pathname.toLowerCase() ?? "";

/** The path of a page's address, and the pages that a script for all of them is told to show, each as a path. */
export function pathsOf({ URL: address }: Document): readonly string[] {
  const asked = URL.parse(address)?.searchParams;
  const routes = ROUTES.flatMap((name) => asked?.get(name) ?? []);
  return [pathOf(address), ...routes.map((route) => `/${route.toLowerCase()}`)];
}
