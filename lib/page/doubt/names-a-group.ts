import type { Cluster } from "../clusters.ts";
import { buttonsIn, buys } from "../dom/buttons.ts";
import { letters } from "../dom/letters.ts";
import { leadsToProduct, linkUrl } from "../dom/link.ts";
import { membersBy } from "../members.ts";
import type { PriceLeaf } from "../money/written-price.ts";
import type { FoundProduct } from "../product.ts";
import type { Survey } from "../survey.ts";

const FROM_WORD =
  "from|starting (at|from)|ab|à partir de|dès|desde|a partir de|da|a partire da|vanaf|från|fra|alkaen|od|już od|mulai|من|ابتداءً من|החל מ|от|від|από|de la|pradedant|chỉ từ|เริ่มต้น(ที่)?|ทุกชิ้น";
const FROM = new RegExp(`^(${FROM_WORD})(?!\\p{L})`, "iu");
/** A name that ends so, or is no more, is a part of the price. */
const TO_FROM = new RegExp(`(^|\\s)(${FROM_WORD})$`, "iu");
/** The same behind an amount. */
const FROM_BEHIND = /(부터|から|〜|～|~|起|[dt][ea]n (başlayan|itibaren)|t[óő]l|alkaen)\s*$/;
/** So many for one amount; groups have such offers, one ware has a price too. */
const SEVERAL = /^\d+ ?(for|für|pour|por|per|voor|för|za|x)(?![a-zà-ž])/i;
const GROUP_TITLE =
  /^(shop|all|discover|explore|alle|tous|toutes|todo)\b|^\p{L}+( (&|and|und|et|y|e|en|och|og|i|a|ja|ve|és|și|и|та|και) \p{L}+)?$/iu;
/** Letters that a group's tile has besides its name and its prices; a product has a brand or a kind. Of so long a text. */
const MOST_BESIDE = 10;
const MOST_TEXT = 600;
/** What a tile says that leads to several products, and how many. */
const SEE_ALL =
  /(shop (now|all|the)|discover|explore|see (all|the|more)|jetzt entdecken|entdecken|découvrir|voir tout|descubr|ver (todo|tudo)|confira|scopri|bekijk|ontdek|upptäck|visa alla|se alle|zobacz|odkryj|一覧|\d+ (articles|artikel|artikelen|articoli|artículos|artigos|products|produkte|produits|prodotti|productos|produtos|producten|produkter|produktów|items|styles|varor|товар|ürün)(?![a-zà-ž]))/i;
/** Letters before a word like "from" in one text, from which on they name what is sold from there. */
const LEAST_NAMED = 5;
/** The part of a list that must be alike. */
const ALIKE = 0.75;

/** Words of a title from which on it names one ware and no group; with a number it does as well. */
const MANY_WORDS = 4;

const namesOne = (title: string): boolean =>
  /\d/.test(title) || (title.match(/\p{L}+/gu)?.length ?? 0) >= MANY_WORDS;

const isFrom = ({ text, tag, words }: PriceLeaf): boolean =>
  FROM.test(text) || FROM.test(tag) || FROM.test(words) || FROM_BEHIND.test(text) || SEVERAL.test(words);

/** Whether a text names things and then the lowest of their prices: "All coats from € 80". */
export const namesThings = ({ words }: PriceLeaf): boolean =>
  TO_FROM.test(words) && letters(words.replace(TO_FROM, "")) >= LEAST_NAMED;

/** The list that an element is a member of, with how many members have such prices alone. */
export const listAround = membersBy(isFrom);

/** Whether a tile shows a group of products as one is shown, with the lowest of its prices. */
export function namesAGroup(
  product: FoundProduct,
  { root, prices }: Pick<Cluster, "root" | "prices">,
  survey: Survey,
): boolean {
  const { title, link, evidence } = product;
  if (prices.length === 0 || leadsToProduct(link ?? "") || evidence.includes("structured")) return false;
  // A link to the group itself may say to buy.
  const isOfGroup = (button: Element) => button.matches("a[href]") && linkUrl(button) === link;
  if (buttonsIn(root).some((button) => buys(button) && !isOfGroup(button))) return false;
  if (TO_FROM.test(title) || prices.every(namesThings)) return true;
  const text = root.textContent.slice(0, MOST_TEXT);
  const said = prices.reduce((sum, { tag }) => sum + letters(tag.replace(title, "")), letters(title));
  const terse = letters(text) <= said + MOST_BESIDE;
  const list = terse && !namesOne(title) ? listAround(root, survey) : null;
  if (list?.fitting && list.fitting >= ALIKE * list.priced) return true;
  return prices.every(isFrom) && ((terse && GROUP_TITLE.test(title)) || SEE_ALL.test(text));
}
