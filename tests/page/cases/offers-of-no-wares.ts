import { each, expected, GRID, type PageCase, picture } from "./page-case.ts";

/** Pages full of pictures and amounts on which nothing is sold that is worn or carried. */
export const OFFERS_OF_NO_WARES: readonly PageCase[] = [
  {
    name: "groups that all lead to one page, and a basket's sum in the head",
    body: `<div id="page"><div class="masthead"><a href="/basket">2 <span class="total">$1,215.00</span></a></div><nav><a href="/">Home</a></nav><h2>Lamps &amp; Shades</h2><ul class="g">${each(
      ["Table Lamps", "Floor Lamps", "Shades", "Bulbs"],
      (name, i) =>
        `<li><a href="/three-columns.html">${picture(`group-${i}`)}<h3>${name} <mark>(${i + 2})</mark></h3></a></li>`,
    )}</ul><footer>All rights reserved</footer></div>`,
    head: GRID,
    kind: "none",
    products: [],
  },
  {
    name: "flats to let, by the month, in Russian",
    lang: "ru",
    head: "<title>Аренда квартир — Дворик</title>",
    body: `<h1>Аренда квартир без посредников</h1><div>${each(
      ["Светлая у парка", "Тихий двор", "С видом на реку"],
      (name, i) =>
        `<div class="card"><a href="/flat-${i}">${picture(`flat-${i}`)}<div><i>Комнат</i> <b>${i + 1}</b></div><div class="card-price"><span>${i + 3}6 000</span> <span>руб</span><span>.</span></div><h4>${name}</h4></a></div>`,
    )}</div>`,
    kind: "none",
    products: [],
  },
  {
    name: "tickets for a fair in three grades, each with a button to buy one",
    url: "https://fair.localhost/pricing.php",
    body: `<div class="banner"><h2>Pricing</h2></div><section><h2><span>Plans</span> Get your ticket</h2>${each(
      ["Early Bird", "Regular", "Patron"],
      (name, i) =>
        `<div class="pricing-item"><img src="/i/dot.png" width="120" height="120"><h2>${name}</h2><h3 class="pricing-price">${i + 1}99 <span class="currency">$</span></h3><p>${i + 4}8/500</p><button id="buy-ticket-btn" class="btn">Buy Ticket</button><img src="/i/dot.png" width="120" height="120"></div>`,
    )}</section>`,
    kind: "none",
    products: [],
  },
  {
    name: "a basket in Turkish, told by its classes and the heads of its columns",
    lang: "tr",
    url: "https://giyim.localhost/index.php?sayfa=4",
    body: `<div class="sepet_genel"><div class="sepet_ust"><span>Ürün</span><span>Adet</span><span>Fiyat</span></div>${each(
      ["Keten Gömlek", "Kadife Etek", "Yün Atkı"],
      (name, i) =>
        `<div class="sepet_satir"><a href="/u/${i}">${picture(`sepet-${i}`)}</a><a href="/u/${i}">${name}</a><span>${i + 1}</span><span>${i + 2}50,00 TL</span></div>`,
    )}<div>Toplam: 1.200,00 TL</div></div>`,
    kind: "none",
    products: [],
  },
  {
    name: "what was ordered before, in a Russian shop's private part",
    lang: "ru",
    url: "https://lavka.localhost/kabinet",
    body: `<h1>Личный кабинет</h1><h3>Заказ № 117</h3>${each(
      ["Платье льняное", "Шарф шёлковый", "Сумка поясная"],
      (name, i) =>
        `<div class="row"><a href="/t/${i}">${picture(`zakaz-${i}`)}</a><a href="/t/${i}">${name}</a><span>Кол-во: ${i + 1}</span><span>${i + 2}500 руб.</span></div>`,
    )}`,
    kind: "none",
    products: [],
  },
  {
    name: "what a bakery serves, by the address of its menu",
    lang: "hu",
    url: "https://pekseg.localhost/restaurant_menu.php",
    body: `<h2>Kínálatunk</h2>${each(
      ["Túrós batyu", "Meggyes rétes", "Sajtos pogácsa"],
      (name, i) =>
        `<div class="item"><img src="/i/suti-${i}.jpg" width="220" height="180"><h4>${name} <span>-${i + 1}950Ft</span></h4><p>Frissen sütve.</p></div>`,
    )}`,
    kind: "none",
    products: [],
  },
  {
    name: "nights in guest houses, in Greek",
    lang: "el",
    body: `<h2>Προσφορές</h2>${each(
      ["Κτήμα Ελιά", "Πέτρινο Σπίτι", "Θαλασσινή Αύρα"],
      (name, i) =>
        `<div class="offer"><a href="/prosfora/${i}">${picture(`ktima-${i}`)}</a><h3><a href="/prosfora/${i}">${name}</a></h3><p>2 διανυκτερεύσεις με πρωινό</p><b>${i + 1}49 €</b></div>`,
    )}`,
    kind: "none",
    products: [],
  },
  {
    name: "journeys, in Thai",
    lang: "th",
    url: "https://travel.localhost/",
    body: `<h2>ทัวร์แนะนำ</h2>${each(
      ["ทัวร์ญี่ปุ่น ซากุระ", "ทัวร์เกาหลี ใบไม้แดง", "ทัวร์ไต้หวัน อาลีซาน"],
      (name, i) =>
        `<div class="col"><a href="/package_detail.php?id=${i}">${picture(`tour-${i}`)}</a><h3><a href="/package_detail.php?id=${i}">${name}</a></h3><p>${i + 4} วัน ${i + 3} คืน</p><b>${i + 2}9,900 บาท</b></div>`,
    )}`,
    kind: "none",
    products: [],
  },
  {
    name: "what members of a club pay, in Danish",
    lang: "da",
    body: `<h1>Bliv medlem</h1>${each(
      ["Ungdom", "Senior", "Veteran"],
      (name, i) =>
        `<div class="hold"><img src="/i/hold-${i}.jpg" width="220" height="180"><h3>${name}</h3><p>Kontingent: ${i + 4}50 kr.</p><p>Træning hver tirsdag.</p></div>`,
    )}`,
    kind: "none",
    products: [],
  },
  {
    name: "journeys told by what their tiles are called in English, in Vietnamese",
    lang: "vi",
    body: each(
      ["Đảo Ngọc Xanh", "Thung Lũng Mây", "Bãi Dài Nắng"],
      (name, i) =>
        `<div class="col"><div class="tour-single"><a href="/dl/${i}">${picture(`dao-${i}`)}</a><a href="/dl/${i}" class="name-tour">${name}</a><div class="tour-price">${i + 1},650,000 VND</div></div></div>`,
    ),
    kind: "none",
    products: [],
  },
  {
    name: "one of a list of stays without the fact that tells what the others are",
    lang: "ko",
    body: `<div class="slides">${each(
      ["바닷가 리조트 2박", "숲속 별장 3박", "섬 한 바퀴", "온천 마을 1박"],
      (name, i) =>
        `<div class="slide"><a href="#">${picture(`stay-${i}`)}<p>${name}</p><span><b>${i + 1}89,000</b>원~</span></a></div>`,
    )}</div>`,
    kind: "none",
    products: [],
  },
  {
    name: "lamps for the dining room, which are wares",
    body: `<div class="g">${each(
      ["Amber Pendant", "Opal Globe", "Brass Arm"],
      (name, i) =>
        `<div class="dining-room-item"><a href="/lamps/${i}">${picture(`lamp-${i}`)}<h4>${name}</h4></a><span>€${i + 5}9.00</span></div>`,
    )}</div>`,
    head: GRID,
    kind: "listing",
    products: expected(
      "Amber Pendant | 59 | EUR | lamp-0",
      "Opal Globe | 69 | EUR | lamp-1",
      "Brass Arm | 79 | EUR | lamp-2",
    ),
  },
  {
    name: "what the parts of a price come to, beside the mark of a card",
    lang: "tr",
    body: each(
      ["Bonus", "Dünya", "Yaprak"],
      (name, i) =>
        `<div class="tab"><ul><li><img src="/i/kart-${i}.png" alt="${name}" width="150" height="60"><b>TAKSİT SEÇENEKLERİ</b><p>Taksit Sayısı Aylık Tutar</p><p>Peşin 199,90 TL</p><p>2 x ${i + 9}4,90 TL</p></li></ul></div>`,
    ),
    kind: "none",
    products: [],
  },
  {
    name: "hotels by the night, with a button to book, in Russian",
    lang: "ru",
    body: `<h1>Отели у моря</h1>${each(
      ["Синий Берег", "Тихая Гавань", "Старый Маяк"],
      (name, i) =>
        `<div class="result" role="button" tabindex="0">${picture(`otel-${i}`)}<div>${name}</div><div>${i + 4} 900 ₽ <span>/ ночь</span></div><button>Забронировать</button></div>`,
    )}`,
    kind: "none",
    products: [],
  },
  {
    name: "dishes that can be ordered, told by what markup calls their parts",
    lang: "de",
    url: "https://kueche.localhost/speisekarte.html",
    body: `<h2>Unsere Gerichte</h2>${each(
      ["Linsensuppe", "Kürbisravioli", "Pflaumenkuchen"],
      (name, i) =>
        `<div class="menu-item-card"><img class="menu-item-image" src="/i/gericht-${i}.jpg" width="220" height="180"><div class="menu-item-name">${name}</div><div class="menu-item-price">€${i + 7},90</div><button class="menu-item-add-btn">In den Warenkorb</button></div>`,
    )}`,
    kind: "none",
    products: [],
  },
];
