import type { Context } from "../context.ts";
import { allIn, nameOf, parentOf } from "../dom/ancestors.ts";
import { buttonsIn, buys } from "../dom/buttons.ts";
import { pageHeading, pathsOf } from "../dom/page-heading.ts";
import { headingText, linesOf } from "../dom/plain-text.ts";
import type { Survey } from "../survey.ts";
import { BASKET_NAMES, BASKET_TEXT } from "./basket-names.ts";

/** Elements above a tile that may belong to the same line of a basket, and controls looked at in it. */
const STEPS_UP = 4;
const MOST_CONTROLS = 20;

/** Parts of an address under which lies what a person has bought or is about to pay, or what a shop keeper sees. */
const SETTLED_PATH =
  /\/(backoffice|(my-?|customer\/)?account(?!\/wish)|checkouts?(?!\/cart)|my-?orders?\w{0,6}|orders?([-_]?(history|status|confirmation|received|tracking|summary|details?))?|purchases|(mein-?|kunden)?konto|kasse|(mon-?)?compte|caisse|(mes-?)?(commandes?|achats)|(mi-?)?cuenta|(mis-?)?pedidos?|area-?clienti|ordini|(minha-?)?conta|mijn-?account|bestellingen|mina-?sidor|kassan?|moje-?konto|zamowieni[ae]|mypage|histori\w+[-_]?(de[-_]?)?(commandes?|pedidos|orders?|ordini)|(order|shopping|checkout|purchase|payment|pay|buy|cart)[-_]?confirm\w*|confirm)(\.\w+)?(\/|$)/;

/** Where shop keepers work; also what beginners call the folder of their shop. */
const KEEPERS_PATH = /\/(wp-)?admin(\.\w+)?(\/|$)/;

/** Headings of such pages; nothing or a number follows. */
const SETTLED_HEADING =
  /^((your|my|past|recent|meine|letzte|mes|vos|mis|tus|i miei|i tuoi|minhas|meus|mijn|mina|moje|twoje) )?(orders?( (history|status|summary|confirmation))?|purchases|checkout|bestell(ungen|historie|verlauf)|käufe|(historique (des? )?([mtv]es |[nv]os )?)?commandes|achats|pedidos|compras|ordini|acquisti|encomendas|bestelgeschiedenis|bestellingen|aankopen|beställningar|köp|zamówienia|zakupy|(ご)?注文(履歴|内容)(の?確認)?|購入履歴|お買い物内容確[定認]|주문내역|訂單紀錄|订单|заказы|(мои |история )заказ(ы|ов)|личный кабинет|особистий кабінет|оформлени[ея] (заказа|замовлення)|finalizar( a)? compra|(zur )?kasse|pokladna|objednávky|παραγγελίες|siparişler(im)?|הזמנות|طلباتي)[^a-zà-ž]*$/;

const REMOVE =
  /remove|delete|trash|entfernen|löschen|supprim|retirer|enlever|eliminar|quitar|rimuovi|elimina|remover|verwijder|ta bort|usuń|削除|삭제|删除|刪除|移除|удал|видал|odstran|odebr|törl|kaldır|\bsil\b|poista|fjern|slet|șterge|αφαίρεση|διαγραφή|حذف|إزالة|הסר|מחק/i;
/** What open icon fonts call crosses and bins, and what scripts call the way to remove something. */
const CROSSES = ["-times", "-xmark", "bi-x", "trash", "close"].map((name) => `[class*="${name}"]`).join();
/** Beside the way to remove it: a line of what a shop keeper has, or of an account. */
const EDIT =
  /^(edit|bearbeiten|modifier|éditer|editar|modifica|bewerken|redigera|edytuj|編集|편집|수정|编辑|修改|изменить|редагувати|upravit|düzenle|تعديل|עריכה)$/i;
const REMOVERS = "a,button,input[type=submit],input[type=checkbox],[role=button]";
/** What markup calls a line of a basket. */
const LINE = /(cart|basket|bag)[-_]{0,2}(item|line|row)|line-?item/i;
const QUANTITY = '[type=number],[name*="qty" i],[name*="quantit" i],[class*="qty" i],[class*="quantit" i]';

/** Words for how many, in lower case. Common practice, no source. */
const HOW_MANY =
  "qty|quantity|quantité|qté|menge|anzahl|cantidad|quantità|quantidade|aantal|antal|ilość|množství|mennyiség|cantitate|ποσότητα|кол-?во|количество|кількість|adet|miktar|数量|數量|수량|الكمية|כמות";
/** How many of a line a text says to be in a basket. */
const COUNTED = new RegExp(`(${HOW_MANY})\\s*[:：.x×]?\\s*\\d`, "i");
/** The same as the head of a column, where lines show no more than a number. */
const QUANTITY_HEAD = new RegExp(`^(${HOW_MANY})$`);
/** Elements above a tile that markup may call a basket, and the texts of one among which heads are. */
const STEPS_TO_BASKET = 6;
const MOST_HEADS = 40;
/** Characters of a line that are read. */
const MOST_TEXT = 600;

/** Names of more than one word that addresses give a basket; bags are wares as well. */
const BASKET_WORDS =
  /^((show|view|my|shop|shopping|goto|see|list)[-_]?(cart|basket)|(cart|basket)[-_]?(list|view|page|show|index|items|details?|added|add)|add(ed)?[-_]?to[-_]?(cart|basket))$/;

/** What addresses call the list of what a person would like to have: nothing there is taken, though all can be removed. */
const WISHED_PATH =
  /\/[^/]*(wish-?_?list|likes?[-_]?list|my-?likes|favou?rit|merkzettel|wunschliste|(mes-?|meine-?)favori|preferiti|ulubione)[^/]*\/?$/;

type Page = "basket" | "settled" | "wished" | "other";

/** What pages are, found out once. */
const pages = new WeakMap<Context, Page>();

/** What the first heading of the second rank says that can be seen, on a page without one of the first. */
function headingInSecond({ doc, furniture }: Context): string {
  if (doc.querySelector("h1")) return "";
  const second = allIn(doc, "h2").find((one) => !furniture.isApart(one) && !furniture.isHidden(one));
  return second ? headingText(second).toLowerCase() : "";
}

function kindOf(context: Context): Page {
  const { doc } = context;
  const paths = pathsOf(doc);
  const heading = pageHeading(context) || headingInSecond(context);
  if (paths.some((path) => WISHED_PATH.test(path))) return "wished";
  if (paths.some((path) => SETTLED_PATH.test(path)) || SETTLED_HEADING.test(heading)) return "settled";
  if (paths.some((path) => KEEPERS_PATH.test(path)) && !buttonsIn(doc).some(buys)) return "settled";
  const names = paths.map((path) => path.replace(/(\.\w+)?\/?$/, "").replace(/.*\//, ""));
  const isBasket = (name: string) => BASKET_NAMES.includes(name) || BASKET_WORDS.test(name);
  return names.some(isBasket) || BASKET_TEXT.test(heading) ? "basket" : "other";
}

function kindOnce(context: Context): Page {
  const page = pages.get(context) ?? kindOf(context);
  pages.set(context, page);
  return page;
}

/** Whether a page is a basket or about orders or the check-out, so that it is about no product. */
export const isBought = (context: Context): boolean => ["basket", "settled"].includes(kindOnce(context));

const removes = (control: Element): boolean => {
  const said = ["class", "aria-label", "title", "name", "value"].map((name) => control.getAttribute(name));
  return REMOVE.test([...said, control.textContent.slice(0, 40)].join("\n"));
};

/** Whether a control is drawn as a cross or a bin: in a basket it removes a line. */
const bearsCross = (control: Element): boolean => control.querySelector(CROSSES) !== null;

/** Whether markup calls an element or what lies around it a basket, and one of the heads there says how many. */
function isInBasket(list: Element): boolean {
  let around: Element | null = list;
  for (let step = 0; around && step < STEPS_TO_BASKET; around = parentOf(around), step++) {
    const names = nameOf(around)
      .toLowerCase()
      .split(/[\s_-]+/);
    if (!names.some((name) => BASKET_NAMES.includes(name))) continue;
    const lines = linesOf([around], MOST_TEXT).toLowerCase().split("\n");
    return lines.slice(0, MOST_HEADS).some((line) => QUANTITY_HEAD.test(line.trim()));
  }
  return false;
}

/** What lists of one reading are baskets: the tiles of one share the answer. */
const baskets = new WeakMap<Context, Map<Element, boolean>>();

function liesInBasket(root: Element, context: Context): boolean {
  const list = parentOf(root);
  if (!list) return false;
  const known = baskets.get(context) ?? new Map<Element, boolean>();
  baskets.set(context, known);
  const found = known.get(list) ?? isInBasket(list);
  known.set(list, found);
  return found;
}

/**
 * Whether a tile shows what a person has taken already: a line of a basket, with its quantity or the way to remove it, or
 * anything among orders and at the check-out; or a line that can be edited and removed, as a shop keeper's can.
 */
export function isAlreadyTaken(root: Element, survey: Survey, context: Context): boolean {
  const page = kindOnce(context);
  if (page === "settled") return true;
  if (page === "wished") return false;
  if (page === "other" && liesInBasket(root, context)) return true;
  const own = survey.picturesIn.get(root) ?? 0;
  let line = root;
  for (let up = parentOf(root), step = 0; up && step < STEPS_UP; up = parentOf(up), step++) {
    if ((survey.picturesIn.get(up) ?? 0) > own) break;
    line = up;
  }
  const counted = LINE.test(nameOf(line)) || line.querySelector(QUANTITY) !== null;
  const controls = allIn(line, REMOVERS).slice(0, MOST_CONTROLS);
  const kept = controls.some(({ textContent }) => EDIT.test(textContent.trim()));
  if (page !== "basket" && !counted && !kept) return false;
  const removable = controls.some((one) => removes(one) || (page === "basket" && bearsCross(one)));
  if (page !== "basket") return removable;
  return counted || removable || COUNTED.test(line.textContent.slice(0, MOST_TEXT));
}
