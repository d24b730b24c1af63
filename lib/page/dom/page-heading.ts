import type { Context } from "../context.ts";
import { headingText } from "./plain-text.ts";

/** Characters; a heading that says what a page is about has fewer. */
const LONGEST_HEADING = 40;
/** Headings looked at: drawers have some. */
const MOST_HEADINGS = 12;

/** What the main heading says that a page is about, in lower case; "" where none shows or it is a longer one. */
export function pageHeading({ doc, furniture }: Context): string {
  const shows = (one: Element) => !furniture.isApart(one) && !furniture.isHidden(one);
  const heading = [...doc.getElementsByTagName("h1")].slice(0, MOST_HEADINGS).find(shows);
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
