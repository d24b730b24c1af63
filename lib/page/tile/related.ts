import type { Cluster, Clustered } from "../clusters.ts";
import { allIn, follows, nameOf, nearest, parentOf } from "../dom/ancestors.ts";
import { leadsToProduct, linkAway } from "../dom/link.ts";
import { plainText } from "../dom/plain-text.ts";
import type { MainDraft } from "../main/main-draft.ts";
import { kindOf } from "../members.ts";

/** Headings, or what is called one. */
const HEADINGS =
  'h1,h2,h3,h4,h5,h6,header,[class*="title" i],[class*="heading" i],[class*="related" i],[class*="upsell" i]';
/** What markup calls the block around such products. */
const RELATED_NAME =
  /(related|similar|recommended|cross-?sell|up-?sell)[-_]?(product|item|goods)|(product|item)s?[-_]?(related|similar|recommended)/i;
/** Headings looked at, and those between two yields. */
const MOST_HEADINGS = 300;
const STRIDE = 40;
/** Characters of such a heading. */
const LONGEST_HEADING = 60;
/** Levels above a heading within which the products are that it announces. */
const LEVELS = 4;
/** Products of one kind from which on a heading announces them. */
const LEAST = 2;
/** Characters of one without a price. */
const MOST_TEXT = 600;

/** What a page says of products beside its own, in some thirty languages. Common practice, no source. */
const RELATED =
  /\b(related|similar|other) (products?|items?|goods|styles)|(may|might|could|will|ll) (also )?(like|love|enjoy)|also (bought|viewed|liked?)|recommended|complete (the|your) look|(goes|wear|pairs?|style) (it )?(well |great )?with|more like this|ähnliche (produkte|artikel)|(könnte|dürfte) (ihnen|dir|sie|dich)|passt (gut )?(dazu|zu)|dazu passt|(weitere|verwandte) (produkte|artikel)|kunden kauften|(produits|articles) (similaires|associés|apparentés|liés|complémentaires)|vous (aimerez|pourriez|aimeriez)|dans la même|(productos|artículos) (relacionados|similares|recomendados)|(te|le) pued[ea]n? (que te )?(gustar|interesar)|también (te|le) |produtos (relacionados|semelhantes|similares|recomendados)|você (também )?(pode|vai)|quem (viu|comprou)|prodotti (correlati|simili|consigliati)|potrebbe(ro)? (anche )?(piacer|interessar)|gerelateerde|vergelijkbare|misschien (ook|vind)|relaterade|liknande|lignende|relater(te|ede)|(kanske|kan) (också|også)|samankaltais|liittyvät|podobne|powiązane|(mogą|może) (ci|cię|państ)|polecane|(souvis|súvis)|podobné|mohlo by|kapcsolódó|hasonló|produse (similare|asemănătoare|recomandate|înrudite)|s-ar putea|похожие|с этим товаром|рекоменд|сопутств|смотрите также|вам (может|также|понрав)|схожі|супутні|подібн|свързани|подобни|σχετικά|παρόμοια|benzer|ilgili ürün|önerilen|mungkin.{0,12}suka|produk (terkait|serupa|lain)|sản phẩm (liên quan|tương tự|cùng (loại|thương hiệu)|khác)|có thể bạn|สินค้า(ที่เกี่ยวข้อง|แนะนำ|ใกล้เคียง)|関連(商品|アイテム)|おすすめ|こちらも|相[关關](商品|[产產]品|推[荐薦])|猜你喜[欢歡]|관련 ?상품|추천 ?상품|비슷한|함께 (본|구매)|(منتجات|سلع) (ذات صلة|مشابهة|مماثلة)|قد (يعجبك|تعجبك)|محصولات (مرتبط|مشابه)|מוצרים (דומים|קשורים)|अन्य उत्पाद|संबंधित/iu;

const WORD = /\p{L}{2}/u;

/** Whether a picture says what it shows and leads to a product. */
const isNamedLink = (picture: Element): boolean =>
  WORD.test(picture.getAttribute("alt") ?? "") && leadsToProduct(linkAway(picture) ?? "");

/** Whether an element has a picture of these and few words, as a tile without a price does; or one that tells as much. */
function looksLikeTile(element: Element, pictures: readonly Element[]): boolean {
  const isShort = element.textContent.length < MOST_TEXT;
  const own = isShort ? pictures.filter((picture) => element.contains(picture)) : [];
  return WORD.test(element.textContent) ? own.length > 0 : own.some(isNamedLink);
}

/** The members of the list that a heading announces: that of the `first` picture behind it. */
function announcedBy(heading: Element, first: Element, pictures: readonly Element[]): readonly Element[] {
  let levels = 0;
  const block = nearest(heading, (up) => levels++ > LEVELS || up.contains(first));
  if (!block?.contains(first)) return [];
  let member = first;
  for (let list = parentOf(member); list && !member.contains(heading); list = parentOf(list)) {
    const kind = kindOf(member);
    const members = [...list.children].filter(
      (one) => kindOf(one) === kind && follows(heading, one) && looksLikeTile(one, pictures),
    );
    if (members.length >= LEAST) return members;
    member = list;
  }
  return [];
}

/** What a product's page announces beside its own. */
export interface Related {
  /** Products without a price, each with its pictures. */
  readonly unpriced: ReadonlyMap<Element, readonly Element[]>;
  /** Those and the tiles that have one. */
  readonly all: ReadonlySet<Element>;
}

/**
 * Products under a heading of a product's page that announces others: it takes neither a link nor a telling name to be
 * one there. `priced`: the tiles that have a price
 */
export function* relatedTiles(
  { survey, context: { doc, furniture } }: Clustered,
  main: MainDraft | null,
  priced: readonly Cluster[],
): Generator<undefined, Related, undefined> {
  const unpriced = new Map<Element, readonly Element[]>();
  const all = new Set<Element>();
  if (!main) return { unpriced, all };
  const roots = new Set(priced.map(({ root }) => root));
  const free = survey.pictures.filter((picture) => !nearest(picture, (up) => roots.has(up)));
  yield;
  for (const [i, heading] of allIn(doc, HEADINGS).slice(0, MOST_HEADINGS).entries()) {
    if (i % STRIDE === 0) yield;
    const said = plainText(heading.textContent);
    const announces =
      RELATED_NAME.test(nameOf(heading)) || (said.length <= LONGEST_HEADING && RELATED.test(said));
    if (!announces || furniture.isApart(heading)) continue;
    const next = survey.pictures.find((picture) => follows(heading, picture));
    if (!next) continue;
    const isFree = free.includes(next);
    for (const tile of announcedBy(heading, next, isFree ? free : survey.pictures)) {
      all.add(tile);
      if (!isFree) continue;
      const own = free.filter((picture) => tile.contains(picture));
      unpriced.set(tile, own);
    }
    yield;
  }
  return { unpriced, all };
}
