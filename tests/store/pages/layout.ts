import { escaped } from "./html.ts";
import { STYLE } from "./style.ts";

/** The sections in the shop's own menu: address, name, slots. */
export const SECTIONS = [
  { path: "/dresses", name: "Dresses", slots: ["one-piece"] },
  { path: "/tops", name: "Tops & knitwear", slots: ["top"] },
  { path: "/skirts-trousers", name: "Skirts & trousers", slots: ["bottom"] },
  { path: "/coats-jackets", name: "Coats & jackets", slots: ["layer"] },
  { path: "/shoes-bags", name: "Shoes & bags", slots: ["shoes", "bag"] },
  {
    path: "/finishing-touches",
    name: "Finishing touches",
    slots: ["legwear", "headwear", "jewellery", "accessory"],
  },
] as const;

const icon = (path: string): string =>
  `<svg viewBox="0 0 24 24" width="22" height="22" fill="none" stroke="currentColor" stroke-width="1.5" aria-hidden="true">${path}</svg>`;
const LENS = icon('<circle cx="10.5" cy="10.5" r="6.5"/><path d="M15.5 15.5 21 21"/>');
const PERSON = icon('<circle cx="12" cy="8" r="4"/><path d="M4 21c1-5 4-7 8-7s7 2 8 7"/>');
const BASKET = icon('<path d="M4 9h16l-1.5 11h-13zM8 9l4-6 4 6"/>');

const MARK =
  '<svg class="mark" viewBox="0 0 40 40" width="40" height="40" aria-hidden="true"><path d="M6 33 20 5l14 28z" fill="none" stroke="currentColor" stroke-width="2"/><path d="M12 33c4-9 12-9 16 0" fill="none" stroke="currentColor" stroke-width="2"/></svg>';

/** A whole page of the shop around `main`. */
export const layout = (title: string, main: string, head = ""): string => `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)} | Pellowick &amp; Daughters</title>
<meta property="og:site_name" content="Pellowick &amp; Daughters">
<meta property="og:title" content="${escaped(title)}">
<link rel="icon" href="data:,">
<style>${STYLE}</style>
${head}</head>
<body>
<a class="skip" href="#main">Skip to content</a>
<p class="notice">Free delivery over £60 · Our Harbour Street shop is open until six</p>
<header class="top">
<a class="logo" href="/">${MARK}<span>Pellowick <i>&amp;</i> Daughters<small>Saltmarrow-on-Dunn</small></span></a>
<form class="find" action="/" role="search"><label><span class="hidden">Search the shop</span>${LENS}<input type="search" name="q" placeholder="Search"></label></form>
<div class="tools"><a href="/help" aria-label="Your account">${PERSON}</a><a href="/basket" aria-label="Basket, 2 items">${BASKET}<b>2</b></a></div>
<nav aria-label="Shop">${SECTIONS.map(({ path, name }) => `<a href="${path}">${escaped(name)}</a>`).join("")}<a href="/journal">Journal</a></nav>
</header>
<main id="main">
${main}
</main>
<footer>
<div><h2>The shop</h2><p>14 Harbour Street<br>Saltmarrow-on-Dunn</p><p>Monday to Saturday, ten until six</p></div>
<div><h2>Help</h2><a href="/help">Delivery</a><a href="/help">Returns</a><a href="/help">Size guide</a><a href="/help">Write to us</a></div>
<div><h2>About us</h2><a href="/journal">Journal</a><a href="/help">Our makers</a><a href="/help">Mending service</a></div>
<form class="letters" action="/help"><h2>Letters from the harbour</h2><label>Email <input type="email" name="email"></label><button>Sign up</button></form>
<p class="small">Pellowick &amp; Daughters is an invented shop. Nothing here is for sale.</p>
</footer>
</body>
</html>
`;
