import { type PageCase, picture } from "./page-case.ts";

/** What is paid for and is no ware: times, work, animals, films, what was bought before. */
export const SERVICES_AND_FEES: readonly PageCase[] = [
  {
    name: "a gym's courses, paid by the month",
    lang: "it",
    body: `<h1>Palestra</h1>${["Spinning", "Yoga dolce", "Boxe"].map((name, i) => `<dl class="card"><dt tabindex="1${i}">${name}</dt><dd>${picture(`corso-${i}`)}<p tabindex="2${i}">Livello: base</p><p tabindex="3${i}">Costo al mese : 3${i} &euro;</p></dd></dl>`).join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "cars by twelve hours",
    lang: "id",
    body: `<h2>Tarif kendaraan</h2>${["Brio", "Avanza", "Innova"].map((name, i) => `<div class="col"><h3>${name} putih</h3>${picture(`mobil-${i}`)}<ul><li>Rp 21${i}.000 / 12 jam<br>Rp 26${i}.000 / 24 jam</li><li><a href="https://wa.me/0800000000" class="btn">Hubungi</a></li></ul></div>`).join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "work in Mexico, with what it pays",
    lang: "es-MX",
    body: `<h2>Trabaja con nosotros</h2>${["Cajera", "Chofer", "Diseñadora"].map((name, i) => `<section class="p"><div>${picture(`empresa-${i}`)}</div><div><p><a href="oferta/4${i}">${name} de turno</a></p><p class="salario"><b>$6,50${i} MXN</b></p></div><div><a href="oferta/4${i}"><button>Postular</button></a></div></section>`).join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "what was bought before, under a heading of the third rank",
    lang: "fr",
    url: "http://shop.localhost/mes-achats/27",
    head: "<title>Historique de vos commandes</title>",
    body: `<a href="/panier">Panier</a><h3>Historique de vos commandes</h3><table><tbody>${["Riz", "Pagne", "Savon"].map((name, i) => `<tr><td class="product-thumbnail"><a href="#">${picture(`achat-${i}`)}</a></td><td class="product-name"><a href="#">${name} du pays</a></td><td>2</td><td>9 00${i} FCFA</td><td>Livrée</td></tr>`).join("")}</tbody></table>`,
    kind: "none",
    products: [],
  },
  {
    name: "banners, one of which says from where boots are sold",
    url: "http://shop.localhost/banners",
    body: `<div class="mini-cart">Cart</div><a href="/shop">Shop</a><h1>Autumn</h1>${["new coats|warm and light", "for her|boots from $79", "for him|denim, washed twice"].map((said, i) => `<div class="banner"><img alt="" src="/i/banner-${i}.jpg" width="380" height="480"><div><h3>${said.split("|")[0]}</h3><p>${said.split("|")[1]}</p></div><a href="#" class="banner-link"></a></div>`).join("")}`,
    kind: "none",
    products: [],
    layout: true,
  },
  {
    name: "trips by the head",
    lang: "id",
    body: `<h3>PAKET WISATA</h3>${["Candi", "Museum", "Goa"].map((name, i) => `<div class="card">${picture(`trip-${i}`)}<p class="title">${name} besar</p><a href="#" data-toggle="modal">Detail</a><p>IDR Rp. 4${i}.000/px<br></p></div>`).join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "films that are shown, with the price of a ticket",
    lang: "es",
    url: "http://shop.localhost/Cartelera.php",
    body: `<h1>Películas</h1>${["cordero", "isla", "panal"].map((name, i) => `<div class="row"><div><a href="#">${picture(`afiche-${name}`)}</a></div><p>Una expedición llega a la ${name}.</p><p>Precio:$3${i}00</p></div><hr>`).join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "dogs that look for a home, with a fee",
    body: `<h1>Meet our dogs</h1>${["Bruno", "Tilly", "Otter"].map((name, i) => `<figure>${picture(`dog-${i}`)}<figcaption><h3>${name}</h3><p>Fond of long walks.</p><p>Adoption fee $5${i}.</p></figcaption></figure>`).join("")}`,
    kind: "none",
    products: [],
  },
  {
    name: "treatments that one books",
    body: `<h1>Beauty within reach</h1>${["Tanning", "Massage", "Waxing"].map((name, i) => `<article>${picture(`salon-${i}`)}<h4>${name} for all</h4><table><tr><td>Full body</td><td>£2${i}</td></tr></table><a href="contact.php">Make A Booking</a> or call us</article>`).join("")}`,
    kind: "none",
    products: [],
  },
];
