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

/** The path of an address in lower case, with the page that one script for all is told; "" where it is none. */
export function pathOf(address: string | null): string {
  const url = URL.parse(address ?? "");
  const routes = ROUTES.flatMap((name) => url?.searchParams.get(name) ?? []).filter((route) =>
    /^[a-z]/i.test(route),
  );
  return [url?.pathname ?? "", ...routes].join("/").toLowerCase();
}
