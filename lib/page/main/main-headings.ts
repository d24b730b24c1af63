import type { Context } from "../context.ts";
import { follows, nameOf, parentOf } from "../dom/ancestors.ts";
import { buttonsIn, buys } from "../dom/buttons.ts";
import { labelled } from "../dom/labelled.ts";
import { letters } from "../dom/letters.ts";
import { linkUrl } from "../dom/link.ts";
import { headingText, plainText } from "../dom/plain-text.ts";
import { saysOtherwise } from "../doubt/offers-no-ware.ts";
import { readTag } from "../money/price.ts";
import type { Survey } from "../survey.ts";
import { largestBy, namedByHead } from "./largest-text.ts";
import { isSpelledBy } from "./said-by-address.ts";
import { isAboutAny, namesPart } from "./says-any.ts";

/** Headings looked at. */
const MOST_HEADINGS = 12;
/** Whether a link stands in a heading or around it, or behind it in a strip without a choice to make, as in the head of a page. */
const belongsTo = (link: Element, heading: Element): boolean =>
  heading.contains(link) ||
  link.contains(heading) ||
  (follows(heading, link) && !parentOf(heading)?.querySelector("button,select,form,img"));

/** Whether a heading leads to another page, which it then names. */
function leadsElsewhere(heading: Element): boolean {
  const link = heading.closest("a[href]") ?? heading.querySelector("a[href]");
  const url = link && linkUrl(link);
  return url !== null && URL.parse(url)?.pathname !== heading.ownerDocument.location.pathname;
}

/** The path of a shop's first page, in one of its languages or countries too. */
const FIRST_PAGE = /^\/([a-z]{2}([-_][a-z]{2})?\/?)?$/i;

/** Whether a heading names the shop: it says nothing, or has the link to the shop's first page. */
const namesTheShop = (heading: Element): boolean =>
  !/[\p{L}\p{N}]/u.test(heading.textContent) ||
  [heading.closest("a"), ...(parentOf(heading) ?? heading).querySelectorAll("a")].some(
    (link) =>
      FIRST_PAGE.test(link?.pathname ?? "-") &&
      link?.host === heading.ownerDocument.location.host &&
      belongsTo(link, heading),
  );

/** What markup calls the name of the product that a page is about. Common practice, no source. */
const PRODUCT_NAMED =
  /(product|prod|goods|item|detail|(?<![a-z])det|produit|produkt|producto|produto|prodotto|artikel)[-_]*(single|details?|page|info|main|card)?[-_]*(name|title|nom[eb]?|nombre|naam|namn)(?![a-z])|(nom|nombre|nome|titulo|titre|titolo)[-_]*(d[aeo]l?)?[-_]*(produ(i?t|cto|to)|prodotto|articul?o)|nazwa[-_]*(produktu|towaru)|(urun|ürün)[-_]*(adi|isim|baslik)|(ten[-_]*san[-_]*pham|san[-_]*pham[-_]*ten)(?![a-z])|nama[-_]*(produk|barang)/i;
/** What all such names have in them. */
const NAMED = ["na", "tit", "nom", "urun", "pham"];
const NAMED_CLASS = NAMED.map((part) => `[class*="${part}" i]`).join();
const NAMED_ID = NAMED.map((part) => `[id*="${part}" i]`).join();

/** What a table or a list of facts says before the name of a product. Common practice, no source. */
const NAME_LABEL =
  /^(product ?name|item ?name|name|name of (the )?(product|item)|title|(produkt|artikel)(name|bezeichnung)|nom( du produit)?|désignation|nombre( del (producto|artículo))?|nome( d[eo]l? produto| prodotto)?|product ?naam|produktnamn|nazwa( (produktu|towaru))?|název|názov|название|наименование|назва|ürün adı|tên (sản phẩm|hàng)|nama (produk|barang)|ชื่อสินค้า|اسم المنتج|نام محصول|שם המוצר|商品名称?|商品名稱|品名|제품명|상품명|책 ?이름|도서명)\s*([:：]|$)/iu;
/** What matches and shows, of what is called so. */
const shownIn = ({ doc, furniture }: Context, selector: string, called = /(?:)/): readonly Element[] =>
  [...doc.querySelectorAll(selector)]
    .filter((heading) => called.test(nameOf(heading)))
    .slice(0, MOST_HEADINGS)
    .filter((heading) => !furniture.isApart(heading) && !furniture.isHidden(heading));

/** What is only on the way to what follows: a group, its maker. */
const LEADS_ON = /[/>›»]$/;

/** Of what is called a name and is made of several lines the first that is no step on the way to it; else it. */
function firstLine(called: Element): Element {
  const lines = [...called.children].filter((line) => line.tagName === "P" || line.tagName === "DIV");
  const said = lines.filter(({ textContent }) => letters(textContent) > 1);
  return (said.length > 1 && said.find(({ textContent }) => !LEADS_ON.test(textContent.trim()))) || called;
}

/** Whether a heading stands in the head of the site, beside its mark: it names a part of the shop at most. */
const isBanner = (heading: Element): boolean =>
  heading.closest("header")?.querySelector('a[class*="logo" i],a img[src*="logo" i]') != null;

/** Headings of the first rank that say what this page is about: neither the shop's name nor what any product's page says. */
export const firstRank = (context: Context): readonly Element[] =>
  shownIn(context, "h1,.h1").filter(
    (heading) => !namesTheShop(heading) && !isAboutAny(heading) && !readTag(headingText(heading)).denied,
  );

/** What a table or a list of facts says is the name of a product, with its label where both are one text. */
export const labelledNames = ({ doc, furniture }: Context): readonly Element[] =>
  labelled(doc, NAME_LABEL).filter(
    (one) => /\p{L}/u.test(one.textContent) && !furniture.isApart(one) && !furniture.isHidden(one),
  );

/**
 * Headings that may name the product a page is about, likeliest first: those that its address spells; those of the first rank, apart from the shop's
 * name; what the page's head names; what markup or a table of facts calls a product's name; headings in the head of the
 * site; all others, the lowest ranks last; then the largest text by those of `buttons` that buy, where those stand together; at
 * last what any product's page says.
 */
export function* mainHeadings(
  survey: Survey,
  context: Context,
  buttons: readonly Element[],
): Generator<readonly Element[] | undefined, void, undefined> {
  const { furniture } = context;
  const shown = (selector: string, called?: RegExp) => shownIn(context, selector, called);
  const spelled = shown("h1,h2,h3,h4").filter(({ textContent }) => isSpelledBy(textContent, context.doc));
  if (spelled.length > 0) yield spelled;
  const ranked = firstRank(context);
  const first = ranked.filter((heading) => !isBanner(heading));
  if (first.length > 0) yield first;
  const named = yield* namedByHead(context);
  if (named && !first.includes(named)) yield [named];
  const byClass = shown(NAMED_CLASS, PRODUCT_NAMED);
  yield;
  const byId = shown(NAMED_ID, PRODUCT_NAMED).filter((one) => !byClass.includes(one));
  const called = [...byClass, ...byId]
    .map((one) => one.querySelector("h2,h3,h4,h5") ?? firstLine(one))
    .filter((one) => !isAboutAny(one));
  if (called.length > 0) yield called;
  const facts = labelledNames(context);
  if (facts.length > 0) yield facts;
  const banners = ranked.filter(isBanner);
  if (banners.length > 0) yield banners;
  const others = shown("h2,h3,h4,[itemprop=name]").filter(
    (heading) => !leadsElsewhere(heading) && !isAboutAny(heading),
  );
  if (others.length > 0) yield others;
  const small = shown("h5,h6").filter((heading) => !leadsElsewhere(heading) && !isAboutAny(heading));
  if (small.length > 0) yield small;
  const pressed = buttons.filter((one) => buys(one) && !furniture.isApart(one));
  const proper = new Set(buttonsIn(context.doc));
  const marked = pressed.filter((one) => proper.has(one));
  const isOther = saysOtherwise(context);
  const large = isOther ? null : largestBy(marked.length > 0 ? marked : pressed, survey);
  if (large) yield [large];
  const general = shown("h1,h2,h3").filter((one) =>
    isOther ? namesPart(plainText(one.textContent)) : isAboutAny(one),
  );
  if (general.length > 0) yield general;
}
