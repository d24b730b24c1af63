import { describe, expect, it } from "vitest";
import { ANY_COUNTRY, currencyOf, type MoneyHint } from "../../lib/page/money/currency.ts";
import { lowestPrice } from "../../lib/page/money/lowest-price.ts";
import { meaningsOf } from "../../lib/page/money/money-signs.ts";
import { parseAmount } from "../../lib/page/money/parse-amount.ts";
import { readTag } from "../../lib/page/money/price.ts";
import { settleMoney } from "../../lib/page/money/settle-money.ts";

const NO_HINT: MoneyHint = { codes: [], regions: [] };
const from = (...regions: string[]): MoneyHint => ({ codes: [], regions });
const declared = (...codes: string[]): MoneyHint => ({ codes, regions: [] });

/** Price tags as stores write them; the codes are those of ISO 4217. Common practice, no source. */
const TAGS: readonly (readonly [tag: string, amount: number, currency: string | null, hint?: MoneyHint])[] = [
  ["55,99 € – 59,99 €", 55.99, "EUR"],
  ["150.00$ 210.00$", 150, "USD"],
  ["10000,00CFA", 10000, "XOF"],
  ["Rp498,000.00", 498000, "IDR"],
  ["450.00 ر.س", 450, "SAR"],
  ["٢٢٠٫٥٠ ر.س", 220.5, "SAR"],
  ["SFr. 45.00", 45, "CHF"],
  ["CHF 1'299.–", 1299, "CHF"],
  ["Rent: ₹4999/-", 4999, "INR"],
  ["₹1,24,999", 124999, "INR"],
  ["1.299,00 kr", 1299, "SEK", from("SE")],
  ["1.299,00 kr", 1299, "DKK", from("DK")],
  ["1 299,00 kr", 1299, null],
  ["kr 399", 399, "NOK", declared("NOK")],
  ["399:-", 399, "SEK", declared("SEK")],
  ["€ 49,-", 49, "EUR"],
  ["249:-", 249, "SEK"],
  ["3800/-", 3800, "INR"],
  ["120 GEL", 120, "GEL"],
  ["GEL 120", 120, "GEL"],
  ["R$ 1.299,90", 1299.9, "BRL"],
  ["$1,299", 1299, "USD"],
  ["$1,299", 1299, "CAD", from("CA")],
  ["$45", 45, "AUD", declared("AUD")],
  ["$45", 45, "USD", declared("EUR")],
  ["A$ 59", 59, "AUD"],
  ["NT$1,280", 1280, "TWD"],
  ["HK$ 480", 480, "HKD"],
  ["USD 45", 45, "USD"],
  ["45.00 GBP", 45, "GBP"],
  ["¥12,800", 12800, "JPY"],
  ["¥128", 128, "CNY", from("CN")],
  ["9,900円", 9900, "JPY"],
  ["199,99 zł", 199.99, "PLN"],
  ["1 290 Kč", 1290, "CZK"],
  ["12 990 Ft", 12990, "HUF"],
  ["2.990.000 ₫", 2990000, "VND"],
  ["12.500 د.ك", 12.5, "KWD"],
  ["Rs. 1,499", 1499, "INR"],
  ["Rs 1,499", 1499, "PKR", from("PK")],
  ["S/ 99.90", 99.9, "PEN"],
  ["R 499", 499, "ZAR"],
  ["1.250,00 TL", 1250, "TRY"],
  ["$49.99 USD", 49.99, "USD"],
  ["$29/month", 29, "USD"],
  ["Original price was: $210.00. Current price is: $150.00.", 150, "USD"],
  ["From £35", 35, "GBP"],
  ["2\u00a0499 kr", 2499, "SEK", from("SE")],
  ["14\u202f990 ₽", 14990, "RUB"],
  ["Euro 12,50", 12.5, "EUR"],
  ["59,000원", 59000, "KRW"],
  ["25 000 FBu", 25000, "BIF"],
  ["٢٩٧٬٥٠٠ ل.س", 297500, "SYP"],
  ["450.000d", 450000, "VND"],
  ["2500 DA", 2500, "DZD"],
  ["75.00 99.00 บาท", 75, "THB"],
  ["1 490 рублей", 1490, "RUB"],
  ["85.000 pesos", 85000, "COP", from("CO")],
  ["519,00Lei Fără TVA: 436,13Lei", 519, "RON"],
  ["599,90 TL 3 taksit x 199,97 TL", 599.9, "TRY"],
  ["£120, postage £8", 120, "GBP"],
  ["7–8 £14.00", 14, "GBP"],
  ["5–6\nEuro 14,00", 14, "EUR"],
  ["27,300\n원 39,000원", 27300, "KRW"],
  ["৳ ৩,২০০", 3200, "BDT"],
  ["₹ १,४९९", 1499, "INR"],
  ["1 890 Kč 1 562 Kč bez DPH", 1890, "CZK"],
  ["R$ 269,91 no Pix", 269.91, "BRL"],
  ["N25,000", 25000, "NGN"],
  ["730.000 VNĐ", 730000, "VND"],
  ["R 26", 26, "ZAR"],
];

describe("lowestPrice", () => {
  it.each(TAGS.map(([tag, amount, currency, hint = NO_HINT]) => ({ tag, amount, currency, hint })))(
    "$tag: $amount $currency",
    ({ tag, amount, currency, hint }) => {
      expect(lowestPrice(settleMoney(readTag(tag).amounts, hint ?? NO_HINT))).toEqual({ amount, currency });
    },
  );

  it.each([
    "Size 12 cm",
    "12 reviews",
    "2 for 1",
    "Sale",
    "-30 %",
    "2025",
    "Air 90",
    "N95",
    "26R",
    "da 20",
    "100d",
    "Alder Gel 8",
    "12 pen set",
    "Price:- 500",
    "$",
    "$0.00",
  ])("%s is no price", (text) => {
    expect(readTag(text).amounts).toEqual([]);
  });

  it("leaves out instalments and former prices where a price stands beside them", () => {
    const texts = ["$120.00", "lub 4 raty po $30.00", "or 4 payments of $30.00", "10 x $12.00", "Was $90.00"];
    expect(
      lowestPrice(
        settleMoney(
          texts.flatMap((text) => readTag(text).amounts),
          NO_HINT,
        ),
      )?.amount,
    ).toBe(120);
  });
});

describe("a tag that denies its price", () => {
  it.each([
    "Save $30.00",
    "Free shipping over $75",
    "Gifts under $50",
    "$10 off",
    "Sparen Sie 20 €",
    "Sie sparen 26 % / 4,10 EUR",
    "zzgl. 4,95 € Versand",
    "Moths: a £5 remedy",
    "£1 for every order",
    "Best $64 I ever spent",
    "Spara upp till 800 kr",
    "50 TL Kupon",
    "Mais de 50 €",
    "Más de 50 €",
    "Jusqu’à 50 €",
    "25 000 Ft felett ingyenes",
    "«Dix manteaux entre 200 et 400 €»",
    "0 € – 130 €",
    "Sign up +2,000원",
    "쿠폰 3,000원",
    "1 point per $1",
    "Sold for £620",
    "$4,120 funded",
    "$10 birthday credit",
  ])("%s", (text) => {
    expect(readTag(text).denied).toBe(true);
  });

  it.each([
    "$49",
    "From £35",
    "Regular price €60",
    "Overshirt $80",
    "49,90 € inkl. MwSt. zzgl. Versand",
    "$49.00 Free shipping",
    "Save 20% $40.00",
    "£35 each",
    "Rs. 999 for 3 days",
  ])("not %s", (text) => {
    expect(readTag(text).denied).toBe(false);
  });
});

describe("parseAmount", () => {
  it.each([
    ["1.299", 1299],
    ["1,299.50", 1299.5],
    ["1.299,50", 1299.5],
    ["0.999", 0.999],
    ["12.5", 12.5],
    ["1’299.00", 1299],
    ["49", 49],
  ])("%s", (written, amount) => {
    expect(parseAmount(written)).toBe(amount);
  });
});

describe("currencyOf", () => {
  it("takes a code over everything, and never invents one for kr", () => {
    expect(currencyOf(meaningsOf("nok"), declared("SEK"))).toBe("NOK");
    expect(currencyOf(meaningsOf("kr"), NO_HINT)).toBeNull();
    expect(currencyOf(null, NO_HINT)).toBeNull();
    expect(currencyOf(meaningsOf("$"), { codes: [], regions: [ANY_COUNTRY] })).toBeNull();
  });
});
