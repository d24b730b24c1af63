import { isLabelledName, nameKey } from "../dom/plain-text.ts";
import { namesPart } from "../main/says-any.ts";
import { isSticker } from "./stickers.ts";

/** What is pressed and no name, at the start of a text. */
const ACTION =
  /^(price|prix|preis|precio|prezzo|rent|now|was|from|only|mrp|add|quick|view|shop|buy|choose|select|sale|new|sold out|more|in den|acheter|kaufen|bestellen|ajouter|añadir|aggiungi|comprar|lägg|dodaj|neu|nouveau|nuevo|details?|wishlist|save|remove|delete|entfernen|supprimer|eliminar|rimuovi|verwijder|ver|voir|bekijk|lihat|zobacz|scopri|vedi|xem)\b.{0,18}$/i;

/** A maker's name in a heading that begins as such a text does: "New Harbour". */
const MAKER = /^(New|Only|More|Now) \p{Lu}/u;

/** What begins a description. */
const ABOUT =
  /^(description|beschreibung|descripción|descrição|descrizione|omschrijving|beskrivning|beskrivelse|opis|popis|описание|açıklama|deskripsi|mô tả)\s*[:：]/i;

/** Facts in a row ("M · Very good") are no name. */
const FACTS = /\s[·•|]\s/;

/** Nor is a sentence, or a label with what it is for. */
const NO_NAME = /[.。!?…]$|^[^:：]{1,24}[:：] ?\S/;

/** A label with a long number: "Model: 6765". */
const NUMBERED = /^[^:：\d]{2,24}[:：]\s*\d[\d-]{3,}$/;

/** A short word and how many of that, or how much less: "pcs(282)", "58% off". */
const COUNT = /^(\p{L}{0,9}\.? ?\(\d[\d.,]*k?\)|[-–+]?\d+ ?% ?\p{L}{0,9})$/u;

/** A sentence of more characters describes. */
export const LONGEST_TOLD = 60;

/** What says that something follows. */
const LABEL = /^[^:：]{1,24}[:：]$/;

/** What is said of the tax in a price. */
const TAX =
  /^\(?(((inkl?|incl|zzgl|excl|exkl|plus|hors|sin|con|bez)[. ].{0,14})?(mwst|ust|vat|gst|taxes?|tva|iva|btw|moms|dph)|ttc|ht|税込み?|税抜き?|[含未]税)\.?\)?$/i;

/** What it counts that a label says so. */
export const CALLED = 2;

/** Whether a text says what to press, or what a badge says. */
export const isAction = (text: string): boolean => ACTION.test(text) || isSticker(text);

/** How much a text looks like the name of a product by its words alone: `CALLED` at most. `marked`: markup calls it a heading or a name */
export function scoreWording(text: string, marked: boolean, isHeading: boolean): number {
  let score = 0;
  const acts = ACTION.test(text) && !(isHeading && MAKER.test(text));
  if (acts || TAX.test(text) || (!marked && (isSticker(text) || COUNT.test(text)))) score -= 5;
  if (nameKey(text).length < 3 || ABOUT.test(text) || NUMBERED.test(text)) score -= 4;
  if (LABEL.test(text)) score -= 6;
  else if (isLabelledName(text)) score += CALLED;
  if (text.length > 120 || (isHeading && namesPart(text))) score -= 3;
  if (text.length > LONGEST_TOLD && NO_NAME.test(text)) score -= 1;
  if (FACTS.test(text) || (!marked && NO_NAME.test(text))) score -= 1;
  return score;
}
