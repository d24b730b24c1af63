import { expected, GRID, type PageCase, picture } from "./page-case.ts";

/** Names that only an address, a label or the rest of the page tells from what stands beside them; amounts between words. */
export const TOLD_BY_ADDRESSES: readonly PageCase[] = [
  {
    name: "the group as the heading, the name in a line that the address spells",
    lang: "fr",
    head: GRID,
    body: `<div class="g">${[
      "Trousse|Trousse Élan|trousse-elan",
      "Ceinture|Sangle tressée Mai|sangle-tressee-mai",
      "Sac|Cabas Rivière|cabas-riviere",
    ]
      .map((row, i) => {
        const [group, name, slug] = row.split("|");
        return `<div><a href="/eshop-cuir/${31 + i}-${slug}">${picture(`cuir-${i}`)}</a><h2 itemprop="name"><a href="/eshop-cuir/${31 + i}-${slug}" itemprop="name">${group}</a></h2><span class="price">4${i}€</span><p>${name}</p></div>`;
      })
      .join("")}</div>`,
    kind: "listing",
    products: expected(
      "Trousse Élan | 40 | EUR | cuir-0.jpg",
      "Sangle tressée Mai | 41 | EUR | cuir-1.jpg",
      "Cabas Rivière | 42 | EUR | cuir-2.jpg",
    ),
  },
  {
    name: "a link that is called as the address it leads to, one for all",
    lang: "pt",
    head: GRID,
    body: `<div class="g">${["Camisa Amarela", "Moletom Roxo", "Saia Lunar"].map((name, i) => `<div class="product-card"><img src="/i/roupa-${i}.jpg" alt="Camisa" width="220" height="280"><div class="box-detalhes"><h1>${name}</h1><h2>R$ 5${i},90</h2><a href="/detalhes">Detalhes</a></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Camisa Amarela | 50.9 | BRL | roupa-0.jpg",
      "Moletom Roxo | 51.9 | BRL | roupa-1.jpg",
      "Saia Lunar | 52.9 | BRL | roupa-2.jpg",
    ),
  },
  {
    name: "a label before the name, in lines with a rate",
    head: GRID,
    body: `<div class="g">${["Okra", "Chard", "Leek"].map((name, i) => `<div>${picture(`green-${i}`)}<br>Item Name : ${name}<br>Rate : ₹4${i} Rs. per Kg/Piece<br>Description : Picked this morning<br><button><a href="/buy.php?prid=${i}&price=4${i}">Buy Now</a></button></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Okra | 40 | INR | green-0.jpg",
      "Chard | 41 | INR | green-1.jpg",
      "Leek | 42 | INR | green-2.jpg",
    ),
  },
  {
    name: "pictures that all have one name, which no text says, in links that lead nowhere",
    head: GRID,
    body: `<div class="g">${["Pleated Dress", "Felt Beret", "Silk Scarf"].map((name, i) => `<div><a href="javascript:void(0)" data-link="/p/${i}"><img src="/i/shown-${i}.jpg" alt="商品的名称" width="220" height="280"></a><div class="price-caption"><div>Marlow ${name}</div><div><span>$11${i}.00</span></div></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Marlow Pleated Dress | 110 | USD | shown-0.jpg",
      "Marlow Felt Beret | 111 | USD | shown-1.jpg",
      "Marlow Silk Scarf | 112 | USD | shown-2.jpg",
    ),
  },
  {
    name: "a heading before a row of facts, the price in a heading of its own",
    lang: "nl",
    url: "http://shop.localhost/products/regenjassen",
    body: `<h1>Regenjassen</h1>${["Elbe, licht en waterdicht", "Maas, met capuchon", "Rijn, lang en warm"].map((name, i) => `<div class="product"><h3>${name}</h3><div class="columns" style="display:flex"><div><a href="/products/regenjassen/jas">${picture(`jas-${i}`)}</a></div><div><p>Gewicht</p><p><b>${i + 3}00 g</b></p><p>Waterkolom</p><p><b>hoog (10${i} dm)</b></p></div><div><h5>€6${i}9,-</h5><a href="/products/regenjassen/jas">Meer informatie</a></div></div></div>`).join("<hr>")}`,
    kind: "listing",
    products: expected(
      "Elbe, licht en waterdicht | 609 | EUR | jas-0.jpg",
      "Maas, met capuchon | 619 | EUR | jas-1.jpg",
      "Rijn, lang en warm | 629 | EUR | jas-2.jpg",
    ),
  },
  {
    name: "pictures that lead to their own file, headings that lead to the product, francs between words",
    lang: "fr",
    url: "http://shop.localhost/index.php?page=home",
    head: GRID,
    body: `<h1>Bienvenue</h1><div class="g">${["Fauteuil Coquille", "Lampe Arceau", "Horloge murale"].map((name, i) => `<div><div class="panel"><div class="panel-heading"><h2><a href="/?page=product&idProduct=4${i}"><strong>${name}</strong></a></h2></div><div class="panel-body"><p><a target="_blank" href="/pic/meuble-${i}.jpg">${picture(`meuble-${i}`)}</a> Designer : Anna Aubry<br><br>Année de création : 195${i}<br><br>14${i}0 Frs Disponible !<br></p></div></div></div>`).join("")}</div>`,
    kind: "listing",
    products: expected(
      "Fauteuil Coquille | 1400 | CHF | meuble-0.jpg",
      "Lampe Arceau | 1410 | CHF | meuble-1.jpg",
      "Horloge murale | 1420 | CHF | meuble-2.jpg",
    ),
  },
  {
    name: "wide figures, the tax right behind the sign",
    lang: "ja",
    url: "http://shop.localhost/syohin.php",
    body: `<h1>つむぎ屋</h1><h2>商品紹介</h2>${["藍染手拭", "麻の巾着", "絹の半巾"].map((name, i) => `<section><h3>${name}</h3><div>${picture(`some-${i}`)}</div><div>５枚入り　　１，１６${"０１２"[i]}円税込<br>１０枚入り　　２，２６０円税込</div></section>`).join("")}`,
    kind: "listing",
    products: expected(
      "藍染手拭 | 1160 | JPY | some-0.jpg",
      "麻の巾着 | 1161 | JPY | some-1.jpg",
      "絹の半巾 | 1162 | JPY | some-2.jpg",
    ),
  },
  {
    name: "before and now in Spanish, the word for now right behind an amount",
    lang: "es",
    url: "http://shop.localhost/ofertas.php",
    head: GRID,
    body: `<h1>Ofertas</h1><ul class="g">${["Cartera tejida", "Gorro de lana", "Bufanda larga"].map((name, i) => `<li>${picture(`lana-${i}`)}<h3>${name}</h3><p>Antes 50${i} €</p><p>Ahora 30${i} €</p></li>`).join("")}</ul>`,
    kind: "listing",
    products: expected(
      "Cartera tejida | 300 | EUR | lana-0.jpg",
      "Gorro de lana | 301 | EUR | lana-1.jpg",
      "Bufanda larga | 302 | EUR | lana-2.jpg",
    ),
  },
  {
    name: "rooms by the hour in three languages, which are no wares",
    lang: "es",
    head: GRID,
    body: `<h2>Salas de ensayo</h2><div class="g">${["50 € / hora", "40 € a hora", "30 € all'ora"].map((price, i) => `<div>${picture(`sala-${i}`)}<h3>Sala ${["Norte", "Sur", "Este"][i]}</h3><p>${price}</p></div>`).join("")}</div>`,
    kind: "none",
    products: [],
  },
];
