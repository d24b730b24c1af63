import { clustersOf } from "../../lib/page/clusters.ts";
import { readContext } from "../../lib/page/context.ts";
import { readTag } from "../../lib/page/money/price.ts";
import { priceLeafAt } from "../../lib/page/money/price-leaf.ts";
import { namesMoney } from "../../lib/page/money/scan-money.ts";
import { settleSurvey } from "../../lib/page/money/settle-money.ts";
import { findPlaces } from "../../lib/page/places.ts";
import { readPlaces } from "../../lib/page/read-places.ts";
import { surveyOf } from "../../lib/page/survey.ts";
import { finish } from "../page/finish.ts";

/** Texts with money that are told of at most: a page may be full of them. */
const MOST_TEXTS = 200;
const LONGEST = 120;

/** Why a text with an amount came to nothing, besides the doubts about whole tiles. */
export type TextDoubt = "isNoPriceTag" | "deniesItsPrice" | "hasNoPictureNearby" | "standsAmongOthers";

/** What a reading found and left out; `doubt` is the name of a function of `lib/page/doubt/doubts.ts` or a `TextDoubt`. */
export interface Told {
  readonly described: readonly string[];
  readonly found: readonly { place: string; title: string; role: string; evidence: readonly string[] }[];
  readonly doubted: readonly { place: string; text: string; doubt: string }[];
}

/** Where an element stands, as short as a person needs to find it. */
function placeOf(element: Element): string {
  const parts: string[] = [];
  for (let up: Element | null = element; up && parts.length < 3; up = up.parentElement) {
    const name = up.id
      ? `#${up.id}`
      : [...up.classList]
          .slice(0, 2)
          .map((one) => `.${one}`)
          .join("");
    parts.unshift(up.localName + name);
  }
  return parts.join(" > ");
}

const textOf = (node: Node): string => (node.textContent ?? "").replace(/\s+/g, " ").trim().slice(0, LONGEST);

/** Runs in the page: reads it and tells of everything that looked like a product or a price. */
export function tell(): Told {
  const places = finish(findPlaces(document));
  const doubted: { place: string; text: string; doubt: string }[] = [];
  const known: Element[] = [];
  const hear = (root: Element, doubt: string) => {
    known.push(root);
    doubted.push({ place: placeOf(root), text: textOf(root), doubt: doubt.replace(/\$\d+$/, "") });
  };
  const products = places ? finish(readPlaces(places, hear)).products : [];
  known.push(...products.map(({ root }) => root));
  const context = places && finish(readContext(places));
  const clusters =
    places && context ? finish(clustersOf(settleSurvey(finish(surveyOf(places.roots)), context.hint))) : [];
  const crowded = clusters.filter(({ holdsMore, pictures }) => holdsMore && pictures.length > 0);
  const walker = document.createTreeWalker(document.body, 4);
  for (let node = walker.nextNode(), n = 0; node && n < MOST_TEXTS; node = walker.nextNode()) {
    const text = textOf(node);
    const holder = node.parentElement;
    if (!holder || !namesMoney(text) || known.some((root) => root.contains(holder))) continue;
    if (holder.closest("script,style,noscript,template")) continue;
    n++;
    const leaf = priceLeafAt(node);
    const among = crowded.some(({ prices }) => prices.some(({ element }) => element.contains(holder)));
    const tagless: TextDoubt = readTag(text).denied ? "deniesItsPrice" : "isNoPriceTag";
    const doubt: TextDoubt = !leaf ? tagless : among ? "standsAmongOthers" : "hasNoPictureNearby";
    doubted.push({ place: placeOf(holder), text, doubt });
  }
  return {
    described: context?.described.map(({ name }) => name) ?? [],
    found: products.map(({ root, title, role, evidence }) => ({
      place: placeOf(root),
      title,
      role,
      evidence,
    })),
    doubted,
  };
}
