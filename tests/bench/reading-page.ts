/** A shop page of many tiles as a browser meets it: nested markup, a style sheet, lazy pictures, what stands around. */

const WORDS =
  "linen wool cord silk boxy pleated washed ribbed boiled quilted camp midi rain shirt skirt coat blouse jumper trousers scarf".split(
    " ",
  );

const titleOf = (at: number): string =>
  [3, 7, 11, 13].map((step) => WORDS[(at * step + step) % WORDS.length]).join(" ");

const price = (at: number): string => `€${29 + (at % 90)},${at % 2 ? "00" : "95"}`;

const priceMarkup = (at: number): string =>
  at % 3 === 0
    ? `<div class="price price--sale"><span class="unseen">Regular price</span><s class="price__was">${price(at + 30)}</s><span class="unseen">Sale price</span><span class="price__now">${price(at)}</span></div>`
    : `<div class="price"><span class="unseen">Regular price</span><span class="price__now">${price(at)}</span></div>`;

/** One tile: 26 to 29 elements. */
export const readingTile = (at: number): string => {
  const title = titleOf(at);
  return `<li class="grid__item" id="t${at}"><div class="card-wrap"><div class="card"><div class="card__inner"><a class="card__media" href="/products/p${at}"><div class="media"><img class="media__front" src="/i/${at}.png?w=360" srcset="/i/${at}.png?w=165 165w, /i/${at}.png?w=360 360w, /i/${at}.png?w=720 720w" sizes="25vw" alt="${title} on a hanger" loading="lazy" width="360" height="480"><img class="media__back" src="/i/${at}-b.png?w=360" alt="" loading="lazy" width="360" height="480"></div></a><div class="card__badge"><span class="badge">New</span></div><button class="wish" type="button" aria-label="Save"><svg viewBox="0 0 8 8" width="16" height="16"><path d="M0 0h8v8z"/></svg></button></div><div class="card__content"><div class="card__info"><p class="vendor">Tallow &amp; Finch</p><h3 class="card__heading"><a href="/products/p${at}">${title} ${at}</a></h3><div class="rating" role="img" aria-label="4.6"><span class="rating__stars"></span><span class="rating__count">(${at % 300})</span></div>${priceMarkup(at)}<ul class="swatches"><li><span class="swatch" style="background:#345"></span></li><li><span class="swatch" style="background:#865"></span></li></ul></div><form class="quick"><button type="submit" class="quick__add"><span>Add to cart</span></button></form></div></div></div></li>`;
};

const STYLE = `*{box-sizing:border-box}body{margin:0;font:15px/1.4 system-ui}nav ul{display:flex;gap:12px;list-style:none}nav ul ul{display:none}
.grid{display:grid;grid-template-columns:repeat(4,1fr);gap:16px;list-style:none;margin:0;padding:16px}.card{position:relative;display:flex;flex-direction:column}
.card__inner{position:relative}.media{position:relative;aspect-ratio:3/4;overflow:hidden}.media img{position:absolute;inset:0;width:100%;height:100%;object-fit:cover}
.media__back{opacity:0;transition:opacity .2s}.card:hover .media__back{opacity:1}.card__badge{position:absolute;top:8px;left:8px}.wish{position:absolute;top:8px;right:8px}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.price{display:flex;gap:8px}.swatches{display:flex;gap:4px;padding:0;list-style:none}
.swatch{display:block;width:14px;height:14px;border-radius:7px}.drawer{position:fixed;inset:0 0 0 auto;width:360px;transform:translateX(100%)}.quick{padding:8px 0}
${Array.from({ length: 150 }, (_, i) => `.theme-${i} .part-${i}>a:hover{color:#${100 + i};padding:${i}px}`).join("")}`;

const menu = Array.from(
  { length: 12 },
  (_, i) =>
    `<li><a href="/collections/${i}">Group ${i}</a><ul>${Array.from({ length: 12 }, (_, j) => `<li><a href="/collections/${i}-${j}">Kind ${j}</a></li>`).join("")}</ul></li>`,
).join("");

/** The page with its first `tiles` tiles; its list has the id `list`. */
export const readingPage = (tiles: number): string =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Everything</title><style>${STYLE}</style><script type="application/ld+json">{"@context":"https://schema.org","@type":"Organization","name":"Tallow & Finch","url":"/"}</script></head><body class="theme-3"><div class="header-wrap"><header><a href="/"><img src="/i/logo.png" alt="" width="160" height="40"></a><nav><ul>${menu}</ul></nav></header></div><aside class="drawer"><h2>Your cart</h2><p>Nothing in it yet.</p></aside><main><h1>Everything</h1><ul class="grid" id="list">${Array.from({ length: tiles }, (_, at) => readingTile(at)).join("")}</ul></main><footer><ul>${menu}</ul></footer></body></html>`;
