import type { Context } from "../context.ts";
import { nameOf, parentOf } from "../dom/ancestors.ts";
import { buttonsIn, buys } from "../dom/buttons.ts";
import { leadsToProduct } from "../dom/link.ts";
import { pageHeading, pathOf, pathsOf } from "../dom/page-heading.ts";
import { headingText, linesOf, nameKey, TITLE_BREAK } from "../dom/plain-text.ts";
import type { FoundProduct, Price } from "../product.ts";
import { TILE_NAME } from "../tile/tile-name.ts";
import { isCalledDish, isCalledOtherwise } from "./called-otherwise.ts";
import { hasBasket } from "./is-sold-by-press.ts";
import {
  CALL,
  COURSES,
  EVENT_FILE,
  FACT,
  FOR_SALE,
  HEADING,
  HIRE,
  HOUSE,
  MONTHLY,
  PATH,
  POINTS,
  RATE,
  VOUCHER,
} from "./no-ware-words.ts";

/** Characters of a tile that are read, and links and buttons of it. */
const MOST_TEXT = 600;
const MOST_CALLS = 12;
/** Elements beside a tile in one that holds it alone; a list has more. */
const MOST_BESIDE = 6;
/** A call on a button or a link has fewer characters. */
const LONGEST_CALL = 32;

/** An amount from here on is a salary, a house or a sum collected, in currencies whose unit buys about a coffee. No source. */
const FORTUNE = 15_000;
const STRONG = /^(EUR|GBP|USD|CHF|CAD|AUD|NZD)$/;
/** In others it takes so many times as much. From memory: between two and six to the euro. */
const MIDDLING = /^(BRL|PLN|RON|ILS|AED|SAR|QAR|BGN|MYR)$/;
const MIDDLING_TIMES = 6;

/** Whether a price is more than is paid for what is worn or carried. */
function isFortune({ amount, currency }: Price): boolean {
  const code = currency ?? "";
  return (
    amount >= FORTUNE && (STRONG.test(code) || (amount >= MIDDLING_TIMES * FORTUNE && MIDDLING.test(code)))
  );
}

/** Kinds of things other than wares that a page's data may say it shows. */
const KINDS =
  /"@type"\s*:\s*"(Restaurant|Cafe\w*|FoodEstablishment|Menu\w*|JobPosting|Recipe|Hotel|Lodging\w*|Course)"/;
const LONGEST_SCRIPT = 20_000;

const showsOtherKinds = (doc: Document): boolean =>
  [...doc.querySelectorAll('script[type*="ld+json" i]')].some(({ textContent }) =>
    KINDS.test(textContent.slice(0, LONGEST_SCRIPT)),
  );

/** Whether a link or a button of a tile, other than its name, asks for something else than to buy. */
function callsElsewhere({ parts, title }: FoundProduct): boolean {
  const name = nameKey(title);
  const called = parts.flatMap((part) => [...part.querySelectorAll("a,button")]);
  return called.slice(0, MOST_CALLS).some(({ textContent }) => {
    const call = textContent.trim().toLowerCase();
    return call.length < LONGEST_CALL && CALL.test(call) && !name.includes(nameKey(call));
  });
}

/** A tile, or what holds it and no other picture: a button that buys may stand beside the link that is all of the tile. */
function withButtons(root: Element): Element {
  const around = parentOf(root);
  if (!around || around.childElementCount > MOST_BESIDE) return root;
  const pictures = around.querySelectorAll("img").length;
  return pictures === root.querySelectorAll("img").length ? around : root;
}

/** What is put into a basket, lies where products lie, is called a product's tile and has a price or is described as a product is a ware, whatever is said around it. */
export const isWare = ({ root, parts, link, price, evidence }: FoundProduct): boolean =>
  evidence.includes("structured") ||
  leadsToProduct(link ?? "") ||
  (price !== null && TILE_NAME.test(nameOf(root))) ||
  (parts.length > 1 ? parts : [withButtons(root)]).some((part) => buttonsIn(part).some(buys));

/** Whether a name is that of a voucher. */
export const namesVoucher = (title: string): boolean => VOUCHER.test(title.toLowerCase());

/** Pages known to sell nothing, or to sell something. */
const pages = new WeakMap<Context, boolean>();

/** What the title of a page says, part by part, in lower case. */
const titleParts = (doc: Document): readonly string[] =>
  doc.title
    .toLowerCase()
    .split(TITLE_BREAK)
    .map((part) => part.trim());

/** Whether a page says of itself that it is about times, places, work or gifts, or how things are sent: by its heading, or its title where it has none. */
export const saysOtherwise = (context: Context): boolean =>
  (context.doc.querySelector("h1") ? [pageHeading(context)] : titleParts(context.doc)).some((said) =>
    HEADING.test(said),
  );

/** Headings of each rank looked at for the courses of a menu, and so many of those make one. */
const MOST_HEADINGS = 12;
const LEAST_COURSES = 2;

/** Whether the headings of a page are those of a menu. */
function namesCourses(doc: Document): boolean {
  let courses = 0;
  for (const rank of ["h1", "h2", "h3", "h4"]) {
    // A live list is walked no further than it is looked at.
    const headings = doc.getElementsByTagName(rank);
    for (let at = 0; at < MOST_HEADINGS; at++) {
      const heading = headings.item(at);
      if (!heading) break;
      if (COURSES.test(headingText(heading).toLowerCase())) courses++;
    }
  }
  return courses >= LEAST_COURSES;
}

/** Whether a page shows the menu of a house where one eats, of which nothing can be ordered. */
const showsMenu = (context: Context): boolean =>
  (HOUSE.test(context.doc.title.toLowerCase()) || namesCourses(context.doc)) && !hasBasket(context);

/** Whether a page shows an event, by its address: what is bought there are seats. */
export const showsEvent = (doc: Document): boolean => pathsOf(doc).some((path) => EVENT_FILE.test(path));

function pageSellsNothing(context: Context): boolean {
  const { doc, described } = context;
  return (
    showsEvent(doc) ||
    pathsOf(doc).some((path) => PATH.test(path)) ||
    saysOtherwise(context) ||
    HIRE.test(doc.title.toLowerCase()) ||
    showsMenu(context) ||
    (described.length === 0 && showsOtherKinds(doc))
  );
}

/** Whether a page is about times, places, work or gifts, by its address, its heading or its data; found out once. */
export function sellsNothing(context: Context): boolean {
  const known = pages.get(context) ?? pageSellsNothing(context);
  pages.set(context, known);
  return known;
}

/** Whether a tile stands on such a page and is nothing that is sold for all that; where that shows an event, what leads nowhere is its seats. */
export const isAmongNoWares = (one: FoundProduct, context: Context): boolean =>
  sellsNothing(context) && (!isWare(one) || (!one.link && showsEvent(context.doc)));

/** Whether a tile with a picture and an amount offers a time, a place, work or a gift, or what is eaten there. */
export function offersNoWare(one: FoundProduct): boolean {
  const { parts, link, price, image } = one;
  if (parts.some(isCalledDish)) return true;
  if (isWare(one)) return false;
  const text = linesOf(parts, MOST_TEXT).toLowerCase();
  if (FOR_SALE.test(text)) return false;
  return (
    (price !== null && isFortune(price)) ||
    PATH.test(pathOf(link).replace(/[^/]+\/?$/, "")) ||
    RATE.test(text) ||
    (!image?.closest("a[href]") && MONTHLY.test(text)) ||
    FACT.test(text) ||
    (!link && POINTS.test(text)) ||
    parts.some((part) => part.querySelector("time") !== null || isCalledOtherwise(part)) ||
    callsElsewhere(one)
  );
}
