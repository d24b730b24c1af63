import type { Context } from "../context.ts";
import { follows, nameOf, nearest, parentOf, WHOLE } from "../dom/ancestors.ts";
import { buttonsIn, buys, saysToBuy } from "../dom/buttons.ts";
import { labelled } from "../dom/labelled.ts";
import { letters } from "../dom/letters.ts";
import { linkUrl } from "../dom/link.ts";
import { headingText, nameKey, plainText, TITLE_BREAK } from "../dom/plain-text.ts";
import { saysOtherwise } from "../doubt/offers-no-ware.ts";
import { readTag } from "../money/price.ts";
import { isPriceLabel } from "../money/price-label.ts";
import type { Survey } from "../survey.ts";
import { isSticker } from "../tile/stickers.ts";

/** Headings looked at. */
const MOST_HEADINGS = 12;
/** Texts looked at for the one that the page's head names, and those between two yields. */
const MOST_TEXTS = 3000;
const STRIDE = 50;
/** Characters of a text that are compared with the head's. */
const LONGEST_NAME = 300;
/** Texts looked at around a button. */
const MOST_NEAR = 120;

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

/** Whether a heading names the shop: it says nothing, or has the link to the shop's first page. */
const namesTheShop = (heading: Element): boolean =>
  !/[\p{L}\p{N}]/u.test(heading.textContent) ||
  [heading.closest("a"), ...(parentOf(heading) ?? heading).querySelectorAll("a")].some(
    (link) =>
      link?.pathname === "/" && link.host === heading.ownerDocument.location.host && belongsTo(link, heading),
  );

/** In CSS pixels. */
const sizeOf = (element: Element): number =>
  Number.parseFloat(element.ownerDocument.defaultView?.getComputedStyle(element).fontSize ?? "") || 0;

/** A text in bold letters counts so many times its size. Layout choice. */
const BOLD = 1.05;

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
/** What a heading says on the page of any product, or of several. */
const ABOUT_ANY =
  /^(products?|produk(te?|ter)?|produits?|productos?|produtos?|prodott[oi]|товары?|продукт|ürün|商品|상품|สินค้า|sản phẩm|محصول|منتج|المنتج|shop|store)$|^((product|item|produkt|artikel) ?-?)?(information(en)?|info|details?|descriptions?|specifications?|overview|reviews?|page|beschreibung|informationen|eigenschaften)$|^(description|détails|caractéristiques|descripción|detalles|características|descrizione|dettagli|caratteristiche|descrição|detalhes|omschrijving|kenmerken|specificaties|beskrivning|beskrivelse|opis|szczegóły|popis|описание|характеристики|опис|商品(の?(説明|詳細|情報)){1,2}|صفحه محصول|صفحة المنتج|상품( ?(상세|정보|설명)){1,2}|商品介绍|açıklama|الوصف|mô tả|chi tiết|(ürün )?(detay|bilgi)(lar|ler)?[ıi]?|detalle|dettaglio|detalhe|detail produk|о товаре)( (du |de |del |do |van (het )?)?(produ\p{L}+|artic\p{L}+|artikel|towaru|товара|sản phẩm))?$/iu;

/** Nor does a fact of any product, or a remark. */
const FACT =
  /^(colou?rs?|farben?|couleurs?|colores|cor(es)?|colori?|kleur|färg|kolor|barva|цвет|колір|renk|warna|màu( sắc)?|颜色|顏色|カラー|색상|sizes?|größen?|tailles?|tallas?|tamanhos?|taglie?|maat|storlek|rozmiary?|размер|розмір|beden|ukuran|kích (cỡ|thước)|尺码|尺碼|サイズ|사이즈|delivery|доставка|model) ?[:：]|^[（(][^（()）]*[)）]$|^((收藏|推[荐薦]|分享) ?)+$/;

/** Nor does what says how it is sent. */
const ABOUT_SENDING =
  /shipping|delivery|versand|lieferung|livraison|env[ií]o|frete|spedizion|verzend|bezorg|dostaw|wysyłk|frakt|fragt|toimitus|doprav|szállítás|livrare|(ücretsiz|bedava) kargo|kargo (bedava|ücret)|доставк|配送|送料|배송|giao hàng/;
/** Nor does what says that it costs less. */
const ABOUT_SAVING =
  /discount|rabatt|remise|descuento|descontos?|sconto|korting|zniżk|slev[auy]|kedvezmény|reducer[ei]|indirim|скидк|знижк|έκπτωση|割引|セール|할인|折扣|giảm giá|diskon|خصم|تخفيف|הנחה|ส่วนลด/;
/** Nor is a sentence a name, which is longer than this, in characters. */
const SENTENCE = /^.{60,}[.!?。]$/;
/** What these are tested with: lower case, since flags cost a browser milliseconds. */
const ABOUT_DEAL = [FACT, ABOUT_SENDING, ABOUT_SAVING];
/** Nor does what says that something follows. */
const LABEL_END = /[:：]\s*$/;

/** Whether a text names a part of the page of any product, or says that one follows. */
export const namesPart = (text: string): boolean => ABOUT_ANY.test(text) || LABEL_END.test(text);

/** Whether a text is what a heading says on the page of any product: a part of it, a label, a fact, how things are sent, what is saved or to buy. */
const saysAny = (text: string): boolean =>
  saysToBuy(text) ||
  ABOUT_DEAL.some((words) => words.test(text.toLowerCase())) ||
  isPriceLabel(text) ||
  namesPart(text);

/** The same of a heading. */
export const isAboutAny = (heading: Element): boolean => saysAny(plainText(heading.textContent));

/** The largest of the texts on the page that say what its head calls it, where no heading does. */
function* namedByHead({ doc, furniture }: Context): Generator<undefined, Element | null, undefined> {
  const told = doc.querySelector('meta[property="og:title"]')?.getAttribute("content") ?? "";
  const parts = doc.title.split(TITLE_BREAK);
  // A title of one part may be the shop's name alone.
  const keys = new Set([told, ...(parts.length > 1 ? parts : [])].map(nameKey));
  const walker = doc.createTreeWalker(doc.body, 4);
  let best: { element: Element | null; size: number } = { element: null, size: 0 };
  for (let seen = 0; seen < MOST_TEXTS && walker.nextNode(); seen++) {
    if (seen % STRIDE === 0) yield;
    const key = nameKey(walker.currentNode.nodeValue?.slice(0, LONGEST_NAME) ?? "");
    const element = key.length > 3 && keys.has(key) ? parentOf(walker.currentNode) : null;
    if (!element || element.closest("a[href]") || isAboutAny(element)) continue;
    if (furniture.isApart(element) || furniture.isHidden(element)) continue;
    const size = sizeOf(element);
    if (size > best.size) best = { element, size };
  }
  return best.element;
}

/** The largest text that stands with a picture, and a price if the page shows any, around the buttons that buy: the name, where nothing is a heading. */
function largestBy(buttons: readonly Element[], survey: Survey): Element | null {
  const [button = null] = buttons;
  const isPriced = (up: Element) => survey.prices.length === 0 || survey.pricesIn.has(up);
  const block = nearest(button, (up) => survey.picturesIn.has(up) && isPriced(up));
  if (!block || /^(HTML|BODY)$/.test(block.tagName) || !buttons.every((one) => block.contains(one)))
    return null;
  const around = parentOf(block);
  const isAlone = around !== null && survey.picturesIn.get(around) === survey.picturesIn.get(block);
  return (
    largestIn(block, survey) ?? (isAlone && !WHOLE.test(around.tagName) ? largestIn(around, survey) : null)
  );
}

/** The largest text in a block that may be a name; of several the first. */
function largestIn(block: Element, survey: Survey): Element | null {
  const priced = new Set(survey.prices.map(({ element }) => element));
  const walker = block.ownerDocument.createTreeWalker(block, 4);
  let best: { element: Element | null; size: number } = { element: null, size: 0 };
  for (let seen = 0; seen < MOST_NEAR && walker.nextNode(); seen++) {
    const element = parentOf(walker.currentNode);
    const text = plainText(walker.currentNode.nodeValue);
    if (!element || letters(text) < 3 || priced.has(element) || saysAny(text) || SENTENCE.test(text))
      continue;
    if (isSticker(text)) continue;
    const size = sizeOf(element) * (element.closest("b,strong") ? BOLD : 1);
    if (size > best.size) best = { element, size };
  }
  return best.element;
}

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
 * Headings that may name the product a page is about, likeliest first: those of the first rank, apart from the shop's
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
