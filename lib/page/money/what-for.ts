import { nameOf, parentOf } from "../dom/ancestors.ts";
import { letters } from "../dom/letters.ts";
import { SOME } from "./amount-mark.ts";
import type { Amount } from "./price.ts";
import type { PriceLeaf } from "./written-price.ts";

/** Words beside an amount that is a part of the price, was the price once or buys less: instalments, deposits, hire. */
const ASIDE =
  /\b(instal\w+|payments?|cuotas|rat(?:en?|y|a|er|ami)?|parcelas?|prestações|mensu?[ai][lt]\w*|versements|plazos|pagos|meses|termijn\w*|delen|fois|avbetal\w+|afdrag|lowest|niedrigste\w*|laagste|lägsta|laveste|plus bas|più basso|m[aá]s baj[oa]|mais baixo|was|rrp|msrp|uvp|deposit|kaution|members?|vip|grundpreis|monthly|hire|as low as|rent|rental|miete|location|noleggio|alquiler|aluguel|wynajem|wholesale|atacado|mayorista|grossiste|ingrosso|großhandel|groothandel|hurt)\b|(?<![a-z])[x×] ?$|\d\s?[x×]\s|toptan|оптов|批发价|批發價|도매가|卸売|najniższ|nejnižší|najnižš|legalacsony|monatl|aylık|taksit|splátk|delbetal|részlet|δόσεις|рассроч|плат[еі]ж|частин|вноск|分割|回払|月々|分期|每期|할부|دفعات|قسط|أقساط|תשלומים|ผ่อน|trả góp|cicilan/;

/** What an amount is for that is no whole price: a month, a measure, one way of paying; or that it lacks the tax. */
const PART =
  /(\/|per|pro|par|por|na|al) ?(mo|month|monat|mois|m[eê]s|mese|mies|mnd|md|kk|week|kg|100|[lg]|ml)\b|\/ ?(月|شهر|חודש|мес)|bez dph|\+ ?(vat|gst|mwst|iva|tva|btw|moms|áfa|kdv|dph|pdv|ндс|пдв)|\bexcl|\bex\.? (vat|gst|btw|moms|tax)|netto|hors taxe|ohne mwst|sin iva|\b(com|no|via|pelo) (o )?(pix|boleto)\b/;

/** The same before an amount: it lacks the tax. */
const UNTAXED =
  /(\bex\.? (vat|gst|btw|moms|tax)|\bexcl[a-zà-ž.]*( [a-zà-ž]+)?|netto|hors taxes?|\bht|ohne mwst\.?|sin iva|bez (vat|dph|pdv)|fără tva|без ндс|без пдв|senza iva|kdv hariç|未税|税抜):? ?$/;

/** What says before an amount that the tax is in it. */
const TAXED =
  /税込|含税|含稅|\b(incl(\.|usive)?( of)?|with) (vat|gst|tax(es)?)\b|\binkl\.? (mwst|moms)|iva incl|\bttc\b|с ндс|s dph|z vat/;

/** What an amount is for that buys one piece, where a pack may be on sale. */
const PIECE =
  /(\/|per|pro|par|por|al|alla|à la|za) ?(pz|pezzo|pcs?|piece|pièce|pieza|peça|ud|unidad\w*|un|unit|stk|stück|stuk|st|szt|sztukę|ks|kus|db|adet|pa(?:ir|ar|ire|io)|шт|個|枚|点|件|개|قطعة)(?![a-zà-ž])|\b(cad|cadauno|each|ea)\b\.?\)/;

/** The same before an amount. */
const PIECE_BEFORE =
  /(je|stückpreis|einzelpreis|unitari[oa]|unitaire|(unit|piece) price|styckpris|stykpris|stuksprijs|za sztukę|あたり|単価|개당):? ?$/;

/** What markup calls a part of a price, or how many parts there are. */
export const PART_NAME =
  /instal|parcel|taksit|deliv|delv|shipp|versand|livrais|unit-?price|price-?(per-?unit|tax)|pangv|[-_](pix|boleto)(?![a-z])/i;

/** Letters beside an amount that a price tag has room for ("Regular price"); with more it is a remark on the price. */
const MOST_BESIDE = 16;

/** What stands before and behind an amount, and whether no other follows. */
function around({ said, at }: Amount): { before: string; behind: string; last: boolean } {
  const parts = said.split(SOME);
  return { before: parts[at] ?? "", behind: parts[at + 1] ?? "", last: parts.length === at + 2 };
}

/**
 * Whether the words around an amount say that it is not the price to pay. What stands between two belongs to the second,
 * unless it tells what the first is for.
 */
export function isAside(amount: Amount): boolean {
  const { before, behind, last } = around(amount);
  return (
    letters(amount.said) > MOST_BESIDE ||
    ASIDE.test(before) ||
    UNTAXED.test(before) ||
    PART.test(behind) ||
    (last && ASIDE.test(behind))
  );
}

/** Whether they say that the tax is in it. */
export const isTaxed = (amount: Amount): boolean => TAXED.test(around(amount).before);

/** Whether they say that it buys one piece. */
export function isForOnePiece(amount: Amount): boolean {
  const { before, behind } = around(amount);
  return PIECE_BEFORE.test(before) || PIECE.test(behind);
}

/** Whether its markup calls a price a part of one: an instalment, what a measure costs. */
export const isNamedPart = ({ element }: PriceLeaf): boolean => {
  const parent = parentOf(element);
  return PART_NAME.test(`${nameOf(element)} ${parent && nameOf(parent)}`);
};
