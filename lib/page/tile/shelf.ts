import type { Context } from "../context.ts";
import { addTo, allIn, nameOf, parentOf, WHOLE } from "../dom/ancestors.ts";
import { opensProduct, sells } from "../dom/buttons.ts";
import { leadsToCollection, leadsToGroup } from "../dom/link.ts";
import { pathsOf } from "../dom/page-heading.ts";
import { isTitledShop } from "../dom/titled-shop.ts";
import { hasBasket } from "../doubt/is-sold-by-press.ts";
import { foundProduct } from "../found-product.ts";
import { kindOf, LEAST_MEMBERS } from "../members.ts";
import { barePrices, numberedPrices } from "../money/bare-price.ts";
import { PRICE_NAME } from "../money/price-name.ts";
import type { FoundProduct } from "../product.ts";
import { headingsAbove } from "./headings-above.ts";
import { TILE_NAME } from "./tile-name.ts";

/** Levels above a picture within which a member of a list is looked for. */
const LEVELS = 6;
/** Members from which on a list may be one of products, where not each is called a product's tile; and those looked at. */
const LEAST = 4;
const MOST = 200;
/** Pictures looked at between two yields. */
const STRIDE = 4;
/** Characters of a member, white space and all. */
const MOST_TEXT = 4000;
/** Characters of a heading that announces them. */
const LONGEST_HEADING = 60;
/** Words of a product's name, on an average; groups have fewer. Of letters in scripts that part no words. */
const NAME_WORDS = 3;
const NAME_LETTERS = 8;
/** The same where each is called a product's tile, or the page is a collection by its address or a shop by its title. */
const TILE_WORDS = 2;
/** The part of a list that must tell the same. */
const MOST_OF_THEM = 0.75;

const PRODUCT_NAME =
  /(^|[\s_-])(product|goods|prd)([-_]?(item|card|tile|box|name|title|info))?([\s_-]|$)|(product|goods|prd)[-_]?(item|card|tile|name|title|nm)/i;
/** What stands above products. Common practice, no source. */
const WARES =
  /\bproducts?\b|produkte?n?\b|produits?\b|productos?\b|produtos?\b|prodott[oi]|producten|produkter|produkt[yów]|produse|výrobk|termék|tuotteet|toote|товар|продукц|προϊόντα|ürün|sản phẩm|\bproduk\b|商品|[产產]品|상품|제품|สินค้า|منتجات|محصولات|מוצרים|best ?-?sellers?|new arrivals?|bestseller|neuheiten|nouveautés|novedades|novidades|novità|nowości|новинки|新着/;
/** What stands above groups of them, above what was said or written. */
const NO_WARES = /categor|kategor|catégor|kollektion|review|bewertung|avis|opini|отзыв|blog|news/;
const GROUP_NAME = /categor|collection|promo|banner|campaign|editorial|blog|article|news|post|team|member/i;

/** Addresses of pages that show all that a shop has. */
const SHOP_PATH =
  /\/(products?|produkte|produkter|produkty|produits|productos|produtos|prodotti|producten|shop|store|boutique|tienda|loja|negozio|winkel|sklep|catalog(o|ue?)?|katalog|urunler|san-pham|tovary)(\.\w+)?\/?$/;

const isCalledShop = ({ doc }: Context): boolean => pathsOf(doc).some((path) => SHOP_PATH.test(path));

/** What parts the kind of a row from that of its members. */
const ROW = " > ";

/** Whether members all stand in one row: then that is their list. */
const isInOneRow = (members: ReadonlyMap<Element, unknown>): boolean =>
  new Set([...members.keys()].map(parentOf)).size === 1;

/** Links and buttons of a member that are looked at. */
const MOST_PRESSED = 12;

const pressedIn = (member: Element): readonly Element[] =>
  allIn(member, "a[href],button").slice(0, MOST_PRESSED);

/** Lists of pictures with words, each with its members and their pictures. */
function* listsOf(
  pictures: readonly Element[],
): Generator<undefined, readonly ReadonlyMap<Element, readonly Element[]>[], undefined> {
  const lists = new Map<Element, Map<string, Map<Element, Element[]>>>();
  const put = (list: Element, kind: string, member: Element, picture: Element) => {
    const kinds = lists.get(list) ?? new Map<string, Map<Element, Element[]>>();
    const members = kinds.get(kind) ?? new Map<Element, Element[]>();
    addTo(members, member, picture);
    kinds.set(kind, members);
    lists.set(list, kinds);
  };
  for (const [i, picture] of pictures.slice(0, MOST).entries()) {
    if (i % STRIDE === 0) yield;
    let member = picture;
    for (let level = 0; level < LEVELS; level++) {
      const list = parentOf(member);
      if (!list || WHOLE.test(list.tagName) || member.textContent.length > MOST_TEXT) break;
      put(list, kindOf(member), member, picture);
      // Members may stand in rows: those of all are one list.
      const rows = parentOf(list);
      if (rows) put(rows, `${kindOf(list)}${ROW}${kindOf(member)}`, member, picture);
      member = list;
    }
  }
  return [...lists.values()]
    .flatMap((kinds) => [...kinds])
    .flatMap(([kind, members]) => (kind.includes(ROW) && isInOneRow(members) ? [] : members))
    .filter(({ size }) => size >= LEAST_MEMBERS);
}

/** How much a name says, in words; scripts that part none count their letters. */
const sizeOf = (title: string): number =>
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Thai}]/u.test(title)
    ? (title.length / NAME_LETTERS) * NAME_WORDS
    : (title.match(/[\p{L}\p{N}]+/gu)?.length ?? 0);

const isMost = (count: number, all: number): boolean => count >= MOST_OF_THEM * all;

/** What the headings above a list say follows: products, something else, or neither. */
function headOf(list: Element | null): "wares" | "others" | "" {
  const said = list ? headingsAbove(list).filter(({ length }) => length < LONGEST_HEADING) : [];
  if (said.some((one) => NO_WARES.test(one))) return "others";
  return said.some((one) => WARES.test(one)) ? "wares" : "";
}

/** Of members that lie in each other the outermost, but not where it holds several. */
function withoutNested(
  shelves: ReadonlyMap<Element, readonly Element[]>,
): ReadonlyMap<Element, readonly Element[]> {
  const kept = new Map(shelves);
  for (const root of shelves.keys()) {
    const inner = [...shelves.keys()].filter((other) => other !== root && root.contains(other));
    for (const nested of inner.length > 1 ? [root] : inner) kept.delete(nested);
  }
  return kept;
}

/**
 * Products of a store that shows no price, or amounts without any sign, in lists where nothing else tells: the markup
 * calls their members products and their names are as long as those of products are; or a heading announces them, too;
 * or, on a page with a basket, each has one number that looks like money; or each is bought where it stands. Gives each
 * with its pictures. `alone`: the page shows no other product; else a heading must announce them, or each is bought and has such a number
 */
export function* shelfTiles(
  pictures: readonly Element[],
  context: Context,
  alone: boolean,
): Generator<undefined, ReadonlyMap<Element, readonly Element[]>, undefined> {
  const shelves = new Map<Element, readonly Element[]>();
  for (const list of yield* listsOf(pictures)) {
    yield;
    const [first] = list.keys();
    const head = headOf(first ? parentOf(first) : null);
    const isAnnounced = alone || head === "wares";
    if (head === "others" || (!isAnnounced && ![...list.keys()].slice(0, LEAST).every(sells))) continue;
    const numbered = numberedPrices([...list.keys()], context);
    const found = new Map<Element, readonly Element[]>();
    const products: FoundProduct[] = [];
    let titled = 0;
    let called = 0;
    let bought = 0;
    for (const [root, pictures] of list) {
      yield;
      const names = [root, ...root.querySelectorAll("[class]")].map(nameOf);
      if (GROUP_NAME.test(nameOf(root)) || context.furniture.isApart(root)) continue;
      const product = foundProduct(
        { root, role: "tile", pictures, prices: barePrices(root, context) },
        context,
      );
      if (!product || leadsToGroup(product.link ?? "")) continue;
      // Tiles of groups are called so too, but lead somewhere; the place of a price may be empty.
      const isTile = TILE_NAME.test(nameOf(root)) && product.link === null;
      if (isTile || names.some((name) => PRICE_NAME.test(name))) titled++;
      if (names.some((name) => PRODUCT_NAME.test(name)) || pressedIn(root).some(opensProduct)) called++;
      if (sells(root)) bought++;
      products.push(product);
      found.set(root, pictures);
    }
    const all = list.size;
    if (all < LEAST && titled < all && (bought < all || called < all)) continue;
    const distinct = new Set(products.map(({ title }) => title)).size;
    if (!isMost(products.length, all) || !isMost(distinct, all)) continue;
    const words = products.reduce((sum, { title }) => sum + sizeOf(title), 0) / products.length;
    const priced = products.filter(({ price, root }) => price !== null || numbered.has(root)).length;
    const sold = isMost(bought, all)
      ? all >= LEAST || hasBasket(context)
      : isMost(priced, all) && hasBasket(context);
    const { URL: here } = context.doc;
    const least = leadsToCollection(here) || isTitledShop(context.doc) ? TILE_WORDS : NAME_WORDS;
    const told = (isMost(called, all) && words >= least) || (titled === all && words >= TILE_WORDS);
    const calls = isMost(called, all) || (words >= NAME_WORDS && isCalledShop(context));
    const named = words >= TILE_WORDS || titled === all;
    const headed = calls && named && head === "wares";
    // No pages of their own, on the page of all that a shop has: wares of a word each.
    const places = new Set(products.map(({ link }) => link));
    const shown = isMost(called, all) && isCalledShop(context) && places.size === 1;
    // Beside others, what is bought where it stands and shows a number that looks like money.
    const beside = isMost(bought, all) && isMost(priced, all) && all >= LEAST;
    if (headed || beside || (alone && (sold || told || shown)))
      for (const [root, pictures] of found) shelves.set(root, pictures);
  }
  return withoutNested(shelves);
}
