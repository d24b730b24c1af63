import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { bundle } from "./bundle.ts";
import { evaluateApart } from "./evaluate-apart.ts";
import type { TextDoubt, Told } from "./explain-probe.ts";

/** What was found by which evidence, and what was left out and why. */
export interface Explanation {
  /** Names of products in the page's data (JSON-LD, microdata, RDFa, Open Graph). */
  readonly described: readonly string[];
  readonly found: Told["found"];
  readonly rejected: readonly { place: string; text: string; why: string }[];
}

/** Why a whole tile was left out, by the name of its doubt in `lib/page/doubt/doubts.ts`. */
export const WHY_NOT: Readonly<Record<string, string>> = {
  standsApart: "stands in the page's navigation, footer, a dialog, a drawer or a pop-up",
  isPutAwayWithItsList: "its whole list is not displayed, and is no panel of tabs",
  isTaken: "lies in a basket, among orders or at the check-out",
  isAVoucher: "is called a voucher",
  asksForAGift: "asks for a gift, not for a price",
  hasNoNameOrPicture: "has no name, or no picture",
  leadsToAGroup: "leads to a category, a journal or an event",
  isAmongServices: "stands on a page about times, places, work or gifts, by its address, heading or data",
  isNoWare: "offers a time, a place, work or a gift",
  showsSeveral: "its pictures lead to several places",
  holdsThePage: "its pictures and its amount meet no sooner than in the whole page",
  isAGroup: "names a group of products with the lowest of their prices",
  isOddOneOut: "stands in a list of which hardly anything else has a price",
  hidesItsPrice: "its amount is folded away where its picture is not, and nothing leads further",
  isOutOfReach: "neither picture nor name can be pressed on, and nothing offers to buy it or to see more",
  isBare:
    "a picture and an amount that nothing calls a product: no link, no button that buys, nothing like it",
};

/** Why a tile that no doubt speaks against was left out for what it lies among. */
const WHY_NOT_AMONG: Readonly<Record<string, string>> = {
  liesAmongNoWares: "lies in a list most of which offers times, places, work or gifts",
};

/** Why a text with an amount made no product. */
const WHY_NO_PRICE: Readonly<Record<TextDoubt, string>> = {
  isNoPriceTag: "too many words for a price tag, or inside a button, a label or a choice",
  deniesItsPrice: "its words say that the amount is no price: a saving, shipping, a limit, a sentence",
  hasNoPictureNearby: "no picture near it that is large enough to be a product's",
  standsAmongOthers: "shares its nearest picture with other prices",
};

/** Reads an open page once more, by a build of the reader that keeps the names of its doubts. */
export async function explainPage(page: Page): Promise<Explanation> {
  const probe = await bundle(fileURLToPath(new URL("./explain-probe.ts", import.meta.url)), "Probe");
  const { described, found, doubted } = await evaluateApart<Told>(
    page,
    `(() => { ${probe}; return Probe.tell(); })()`,
  );
  const why: Readonly<Record<string, string>> = { ...WHY_NOT, ...WHY_NOT_AMONG, ...WHY_NO_PRICE };
  return {
    described,
    found,
    rejected: doubted.map(({ doubt, ...rest }) => ({ ...rest, why: why[doubt] ?? doubt })),
  };
}
