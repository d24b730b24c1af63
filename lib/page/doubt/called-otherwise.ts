import { nameOf, parentOf } from "../dom/ancestors.ts";

/** What markup calls times, places, work and gifts in English, whatever language a page is in. Common practice, no source. */
const THINGS = [
  "tour",
  "trip",
  "hotel",
  "room",
  "course",
  "lesson",
  "event",
  "job",
  "flight",
  "villa",
  "apartment",
  "property",
  "ticket",
  "donation",
  "campaign",
  "recipe",
  "doctor",
];
const PARTS =
  "item|card|box|block|single|title|name|price|info|details?|image|img|thumb|photo|content|list|grid|wrap|link|body|meta|text|desc|date|duration|location";

/** Such a word with one for a part of a tile, in either order. */
const CALLED = new RegExp(
  `(^|[\\s_-])((${THINGS.join("|")})s?[_-]{1,2}(${PARTS})|(${PARTS})[_-]{1,2}(${THINGS.join("|")})s?)(?![a-z])`,
  "i",
);
/** What it calls parts of a line of a menu: what can be ordered there is eaten. */
const DISH = /(^|[\s_-])(menu[_-]?item|dish|meal)[_-]{1,2}(name|title|price|desc|image|img|info)/i;
const DISHES = '[class*="menu-item" i],[class*="menu_item" i],[class*="dish" i],[class*="meal" i]';
/** Rooms of a house that things are made for are in the names of wares. */
const OF_A_HOUSE = /(living|bed|bath|dining|show|class)-?room/gi;

const NAMED = THINGS.map((thing) => `[class*="${thing}" i]`).join();
/** Parts of a tile looked at, and so many that are called so tell; the tile itself counts as many. */
const MOST_PARTS = 12;
const LEAST_CALLED = 2;

const isCalled = (element: Element): boolean => CALLED.test(nameOf(element).replace(OF_A_HOUSE, ""));

/** Whether markup calls a tile, or several parts of it, a tour, a room, a course or the like. */
export function isCalledOtherwise(root: Element): boolean {
  const around = parentOf(root);
  const isWhole = around?.childElementCount === 1 && isCalled(around);
  if (isCalled(root) || isWhole) return true;
  const [...parts] = root.querySelectorAll(NAMED);
  return parts.slice(0, MOST_PARTS).filter(isCalled).length >= LEAST_CALLED;
}

/** Whether markup calls several parts of a tile those of a dish. */
export function isCalledDish(root: Element): boolean {
  const [...parts] = root.querySelectorAll(DISHES);
  return parts.slice(0, MOST_PARTS).filter((part) => DISH.test(nameOf(part))).length >= LEAST_CALLED;
}
