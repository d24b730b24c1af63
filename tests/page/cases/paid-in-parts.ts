import { expected, expectedMain, type PageCase } from "./page-case.ts";

const STYLE =
  "<style>.g{display:flex;gap:16px}.g img{width:200px;height:260px}.big{width:480px;height:600px}.no{display:none}</style>";

type Row = readonly [slug: string, name: string, price: string, part: string];

/** Two tiles with the same words beside the price. */
const listing = (
  name: string,
  lang: string,
  code: string,
  rows: readonly Row[],
  more: Partial<PageCase> = {},
): PageCase => ({
  name,
  lang,
  head: STYLE,
  body: `<header><a href="/">Noor</a></header><main><h1>A–Z</h1><div class="g">${rows.map(([slug, title, price, part]) => `<div class="c"><a href="/w/${slug}"><img src="/i/${slug}.jpg"></a><h3><a href="/w/${slug}">${title}</a></h3><div>${price}</div><div>${part}</div></div>`).join("")}</div></main>`,
  kind: "listing",
  products: expected(
    ...rows.map(([slug, title, price]) => {
      const digits = price.replace(/<del>.*?<\/del>|<s .*?<\/s>|[^\d.,]/g, "");
      const amount = /[.,]\d\d$/.test(digits)
        ? digits.replace(/[.,](?=\d{3})/g, "").replace(",", ".")
        : digits.replace(/[.,]/g, "");
      return `${title} | ${amount} | ${code} | ${slug}.jpg`;
    }),
  ),
  ...more,
});

const two = (
  a: string,
  b: string,
  first: readonly [price: string, part: string],
  second: readonly [price: string, part: string],
): readonly Row[] => [
  ["one", a, ...first],
  ["two", b, ...second],
];

/** Prices beside which stands what a part of them costs, in time or in pieces. */
export const PAID_IN_PARTS: readonly PageCase[] = [
  listing(
    "parts counted in an element of their own whose class says amount",
    "pt-BR",
    "BRL",
    two(
      "Saia de algodão",
      "Blusa de renda",
      [
        "R$ 159,90",
        `<span class="installment-amount">4</span> x de <span class="installment-value">R$ 39,98</span> sem juros`,
      ],
      ["R$ 89,00", `ou <b>6x</b> de <b>R$ 14,83</b>`],
    ),
  ),
  listing(
    "parts in French and Spanish",
    "fr",
    "EUR",
    two(
      "Jupe droite",
      "Falda recta",
      ["60,00 €", "3 x 20 € sans frais"],
      ["75,00 €", "Paga en 3 plazos de 25,00 €"],
    ),
  ),
  listing(
    "parts in Turkish",
    "tr",
    "TRY",
    two("Keten etek", "Saten bluz", ["600,00 TL", "3 taksit 200,00 TL"], ["450,00 TL", "Aylık 75,00 TL"]),
  ),
  listing(
    "parts in Russian and Ukrainian",
    "ru",
    "RUB",
    two(
      "Юбка из льна",
      "Блуза из шёлка",
      ["6 000 ₽", "В рассрочку 1 500 ₽"],
      ["4 000 ₽", "4 платежа по 1 000 ₽"],
    ),
  ),
  listing(
    "parts in Japanese",
    "ja",
    "JPY",
    two("リネンスカート", "シルクブラウス", ["¥12,000", "3回払い ¥4,000"], ["¥9,000", "月々 ¥1,500"]),
  ),
  listing(
    "parts in Arabic",
    "ar",
    "SAR",
    two("تنورة كتان", "قميص حرير", ["400 ر.س", "4 دفعات 100 ر.س"], ["200 ر.س", "قسط 50 ر.س"]),
  ),
  listing(
    "parts in German and Polish",
    "de",
    "EUR",
    two("Leinenrock", "Seidenbluse", ["120,00 €", "4 Raten à 30,00 €"], ["90,00 €", "monatlich 7,50 €"]),
  ),
  listing(
    "parts that only the markup tells",
    "sr",
    "RSD",
    two(
      "Lanena suknja",
      "Svilena bluza",
      ["6000 RSD", `<span class="instalment">1500 RSD</span>`],
      ["4000 RSD", `<p class="instalment-value"><b>1000 RSD</b></p>`],
    ),
  ),
  listing(
    "a former price of nothing that does not show",
    "pt-BR",
    "BRL",
    two(
      "Saia de algodão",
      "Blusa de renda",
      [`<s class="no">R$0,00</s> <span>R$159,90</span>`, ""],
      [`<s>R$120,00</s> <span>R$89,00</span>`, ""],
    ),
    {
      layout: true,
      products: expected("Saia de algodão | 159.9 | BRL | one.jpg", "Blusa de renda | 89 | BRL | two.jpg"),
    },
  ),
  listing(
    "packs, and what a piece of them costs",
    "it",
    "EUR",
    two("Calze di spugna", "Slip di cotone", ["€ 21,60", "€ 0,90 / pz"], ["€ 26,40", "(€ 2,20 cad.)"]),
  ),
  listing(
    "packs in German and Polish",
    "de",
    "EUR",
    two(
      "Socken, Dreierpack",
      "Hemden, Doppelpack",
      ["23,97 €", "7,99 € / Stück"],
      ["59,80 €", "29,90 € pro Stk."],
    ),
  ),
  listing(
    "packs in Japanese",
    "ja",
    "JPY",
    two("靴下三足セット", "タオル五枚組", ["¥1,980", "1足あたり ¥660"], ["¥2,750", "¥550／枚"]),
  ),
  {
    name: "a price by the pair, once more and crossed out without",
    lang: "de",
    head: STYLE,
    body: `<main><h1>Schuhe</h1><div class="g">${["Halbschuh", "Stiefel"].map((name) => `<div><a href="/w/${name}"><img src="/i/${name}.jpg"></a><h3>${name} aus Rindleder</h3><p>29,90 € / Paar</p><s>39,90 €</s></div>`).join("")}</div></main>`,
    kind: "listing",
    products: expected(
      "Halbschuh aus Rindleder | 29.9 | EUR | Halbschuh.jpg",
      "Stiefel aus Rindleder | 29.9 | EUR | Stiefel.jpg",
    ),
  },
  {
    name: "a product page with four payments written as large as the price",
    head: STYLE,
    body: `<div class="g"><img class="big" src="/i/kilt.jpg"><div><h1>Wool kilt</h1><p>$80.00</p><p>4 interest-free payments of $20.00</p><button>Add to bag</button></div></div>`,
    kind: "product",
    products: [expectedMain("Wool kilt | 80 | USD | kilt.jpg")],
    layout: true,
  },
];
