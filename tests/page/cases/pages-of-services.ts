import { expected, type PageCase } from "./page-case.ts";

const HEAD = `<header><a href="/"><b>Hollin Row</b></a><a href="/shop">Shop</a><a href="/basket">Basket (0)</a></header>`;
const STYLE = "<style>.g{display:flex;gap:16px}.g img{width:240px;height:200px}</style>";

/** What one card shows: the end of its address, its name, its amount and what stands below. */
type Card = readonly [slug: string, name: string, amount: string, below: string];

const linked =
  (folder: string) =>
  ([slug, name, amount, below]: Card): string =>
    `<div class="card"><a href="${folder}/${slug}"><img src="/i/${slug}.jpg"></a><h3><a href="${folder}/${slug}">${name}</a></h3><p>${amount}</p><p>${below}</p></div>`;

const bare = ([slug, name, amount, below]: Card): string =>
  `<div class="card"><img src="/i/${slug}.jpg"><h3>${name}</h3><p>${amount}</p><p>${below}</p></div>`;

const page = (
  name: string,
  heading: string,
  cards: readonly string[],
  more: Partial<PageCase> = {},
): PageCase => ({
  name: `no product: ${name}`,
  head: STYLE,
  body: `${HEAD}<main><h1>${heading}</h1><div class="g">${cards.join("")}</div></main>`,
  kind: "none",
  products: [],
  ...more,
});

/** Pages with pictures, names and amounts that offer a time, a place, work or a gift. */
export const PAGES_OF_SERVICES: readonly PageCase[] = [
  page(
    "places to work, with pay",
    "Come and join us",
    [
      ["cutter", "Pattern cutter", "£32,000", "Full time · Leeds"] as const,
      ["floor", "Shop floor", "£12.60 an hour", "Saturdays"] as const,
    ].map(linked("/people")),
  ),
  page(
    "rooms by the night",
    "Stay above the mill",
    [
      ["loft", "The loft", "€140", "per night"] as const,
      ["barn", "The barn", "€95", "per night"] as const,
    ].map(linked("/sleep")),
  ),
  page(
    "a menu",
    "Lunch",
    [
      ["soup", "Leek soup", "7,50 €", "mit Brot"] as const,
      ["pie", "Kürbiskuchen", "4,80 €", "mit Sahne"] as const,
    ].map(linked("/karte")),
  ),
  page(
    "evenings with a date",
    "Evenings",
    [
      ["trio", "Low Tide Trio", "$25.00", "<time>14 March</time>"] as const,
      ["talk", "A talk on reeds", "$12.00", "<time>3 April</time>"] as const,
    ].map(linked("/evenings")),
  ),
  page("sums that were collected", "What we gave", [
    ...[["hedge", "Hedges", "$4,120 funded", "41 % · 12 days left"] as const].map(linked("/good")),
    ...[["desks", "School desks", "£950 raised", "214 backers"] as const].map(linked("/good")),
  ]),
  page(
    "treatments that nothing leads to, in a shop with a basket",
    "Care for leather",
    [
      ["wax", "Waxing", "£18", "while you wait"] as const,
      ["sole", "New soles", "£48", "in a week"] as const,
    ].map(bare),
  ),
  page(
    "seats for which a link asks",
    "Kurse im Winter",
    [
      ["filz", "Filzen", "95 €", `<a href="/filz">Jetzt anmelden</a>`] as const,
      ["weben", "Weben", "140 €", `<a href="/weben">Jetzt anmelden</a>`] as const,
    ].map(bare),
    { lang: "de" },
  ),
  page(
    "a paper by the month",
    "Prenumerera",
    [
      ["blad", "Papper", "399 kr/mån", `<a href="/blad">Välj</a>`] as const,
      ["helg", "Helg", "249 kr/mån", `<a href="/helg">Välj</a>`] as const,
    ].map(bare),
    { lang: "sv" },
  ),
  page(
    "prizes whose link leads down the page",
    "Win with us",
    [
      ["first", "A year of clothes", "€500", `<a href="#enter">Take part</a>`] as const,
      ["second", "A pair of shoes", "€100", `<a href="#enter">Take part</a>`] as const,
    ].map(bare),
  ),
  page(
    "vouchers paid with points, by a button that adds them",
    "Kółko stałych gości",
    [
      ["bon", "Bon na 20 zł", "400 pkt", `<button>Dodaj do konta</button>`] as const,
      ["krawiec", "Poprawki krawieckie -40 zł", "700 pkt", `<button>Dodaj do konta</button>`] as const,
    ].map((card) => bare(card).replace("card", "card product")),
    { lang: "pl" },
  ),
  page(
    "rewards for points, kept in an account",
    "Gracias por volver",
    [
      ["vale", "Vale de 15 €", "300 puntos", `<button>Añadir a mi cuenta</button>`] as const,
      ["taller", "Arreglos", "450 puntos", `<p>Valor 30 €</p><button>Añadir a mi cuenta</button>`] as const,
    ].map(bare),
    { lang: "es" },
  ),
  {
    name: "wares that give points, with a button for a list of wishes",
    head: STYLE,
    body: `${HEAD}<main><h1>New this week</h1><div class="g">${linked("/wares")(["apron", "Loom apron", "£48", "<p>480 points</p>"])}${linked("/wares")(["scarf", "Indigo scarf", "£36", "<p>360 points</p>"])}</div></main>`,
    kind: "listing",
    products: expected("Loom apron | 48 | GBP | apron", "Indigo scarf | 36 | GBP | scarf"),
  },
  {
    ...page(
      "dishes, by what the page's data says it is",
      "The loom room",
      [
        ["soup", "Soup of the day", "£7.50", "until it runs out"] as const,
        ["scone", "Cheese scone", "£3.80", "with butter"] as const,
      ].map(linked("/visit")),
    ),
    head: `<script type="application/ld+json">{"@type":"CafeOrCoffeeShop","name":"The loom room"}</script>${STYLE}`,
  },
  page("groups of wares, one with a price for all of it", "Welcome", [
    ...["tops", "skirts", "shoes", "bags"].map(
      (slug) => `<a href="/c/${slug}"><img src="/i/${slug}.jpg"><p>All ${slug}</p></a>`,
    ),
    `<a href="/c/all"><img src="/i/all.jpg"><p>Everything €10</p></a>`,
  ]),
  {
    name: "workshops beside wares: the wares alone",
    head: STYLE,
    body: `${HEAD}<main><h1>New this week</h1><div class="g">${linked("/wares")(["apron", "Loom apron", "£48", "in stock"])}${linked("/wares")(["scarf", "Indigo scarf", "£36", "in stock"])}</div><h2>Learn</h2><div class="g">${linked("/workshops")(["rug", "Weave a rug", "£140", "Saturday"])}</div></main>`,
    kind: "listing",
    products: expected("Loom apron | 48 | GBP | apron", "Indigo scarf | 36 | GBP | scarf"),
  },
  {
    name: "names that sound like calls and headings: books, tickets, teams",
    head: STYLE,
    body: `${HEAD}<main><h1>Team jerseys</h1><div class="g">${linked("/wares")(["book", "Book tote", "£48", "in stock"])}${linked("/wares")(["ticket", "Ticket pocket coat", "£236", "in stock"])}</div></main>`,
    kind: "listing",
    products: expected("Book tote | 48 | GBP | book", "Ticket pocket coat | 236 | GBP | ticket"),
  },
  page(
    "dishes with what a portion costs",
    "Was heute auf den Tisch kommt",
    [
      ["linsen", "Linsen mit Spätzle", "1,90 € p. P.", "45 Min"] as const,
      ["kohl", "Gefüllter Kohl", "2,40 € pro Portion", "70 Min"] as const,
    ].map(linked("/kochen")),
  ),
  page(
    "articles, one with an amount in its headline",
    "Nachgelesen",
    [
      ["jacke", "Warum eine Jacke 400 € kosten darf", "", "12. Mai"] as const,
      ["wolle", "Woher die Wolle kommt", "", "3. Mai"] as const,
      ["knopf", "Der letzte Knopfmacher", "", "1. Mai"] as const,
    ].map(linked("/lesen")),
  ),
  page(
    "threads of a forum, one with a sum, in cards with a common name for items",
    "Новые темы",
    [
      ["moda", "Гардероб на 20 вещей, бюджет 30 000 ₽", "", "12 ответов"] as const,
      ["obuv", "Где чинят обувь", "", "3 ответа"] as const,
      ["pal", "Пальто: шерсть или кашемир", "", "40 ответов"] as const,
      ["mol", "Моль в шкафу", "", "9 ответов"] as const,
    ].map((card) => linked("/t")(card).replace('class="card"', 'class="topic-item"')),
    { lang: "ru" },
  ),
  page(
    "groups of wares with a link that says to buy",
    "Mujer",
    [
      ["vestidos", "Vestidos de fiesta", "desde 39,95 €", ""] as const,
      ["bolsos", "Bolsos de mano", "desde 22,95 €", ""] as const,
      ["lino", "Camisas de lino", "desde 29,95 €", ""] as const,
    ].map((card) =>
      linked("/c")(card).replace("</div>", `<a class="btn" href="/c/${card[0]}">Comprar</a></div>`),
    ),
    { lang: "es" },
  ),
  page(
    "vouchers with amounts, in Polish",
    "Na prezent",
    [
      ["las", "Karta podarunkowa Las", "100 zł", "ważna rok"] as const,
      ["sad", "Karta podarunkowa Sad", "200 zł", "ważna rok"] as const,
    ].map(linked("/karty")),
    { lang: "pl" },
  ),
  {
    name: "no product: a page about one voucher that can be put into the basket",
    head: STYLE,
    body: `${HEAD}<main class="g"><img src="/i/voucher.jpg" style="width:400px;height:300px"><div><h1>Hollin Row gift card</h1><span class="price">£50.00</span><button>Add to basket</button></div></main>`,
    kind: "none",
    products: [],
  },
  page(
    "groups of wares, two words each, all from an amount",
    "Für den Herbst",
    [
      ["stiefel", "Halbhohe Stiefel", "ab 99,95 €", ""] as const,
      ["maentel", "Gewachste Mäntel", "ab 149,95 €", ""] as const,
      ["hemden", "Karierte Hemden", "2 für 80 €", ""] as const,
      ["schals", "Lange Schals", "ab 29,95 €", ""] as const,
    ].map(linked("")),
    { lang: "de" },
  ),
  page(
    "groups with what they hold",
    "Heren",
    [
      ["truien", "Gebreide truien", "vanaf € 34,95", "178 artikelen"] as const,
      ["ondergoed", "Zacht ondergoed", "3 voor € 25", "61 artikelen"] as const,
    ].map(linked("/heren")),
    { lang: "nl" },
  ),
  page(
    "a campaign that names things and the lowest of their prices",
    "Bonjour",
    [["offrir", "Offrir, en mieux", "Tous nos coffrets dès 25 €", ""] as const].map(linked("/fr/idees")),
    { lang: "fr" },
  ),
  page(
    "coupons of a shop, in Thai",
    "ไม่พบสินค้า",
    [
      ["c50", "คูปองใหม่", "ลด ฿50", "ขั้นต่ำ ฿399"] as const,
      ["c150", "คูปองใหญ่", "ลด ฿150", "ขั้นต่ำ ฿990"] as const,
    ].map(bare),
    { lang: "th" },
  ),
  page(
    "appointments, each so many hours long",
    "O oră pentru tine",
    [
      ["dulap", "Dulapul tău", "350 lei", "2 ore"] as const,
      ["acasa", "Acasă la tine", "600 lei", "3 ore"] as const,
    ].map(linked("/stil")),
    { lang: "ro" },
  ),
  page(
    "villas by the night, in Turkish",
    "Favori evlerim",
    [
      ["yakamoz", "Villa Yakamoz", "₺6.500", "/gece"] as const,
      ["zeytin", "Villa Zeytin", "₺4.200", "/gece"] as const,
    ].map(linked("/villas")),
    { lang: "tr" },
  ),
  page(
    "cars for hire, with how they are driven",
    "Nos dernières voitures",
    [
      ["bleue", "Fiora Bleue", "200 DH/Jour", "Vitesse manuelle"] as const,
      ["grise", "Fiora Grise", "280 DH/Jour", "Vitesse automatique"] as const,
    ].map(linked("/agence")),
    { lang: "fr" },
  ),
];
