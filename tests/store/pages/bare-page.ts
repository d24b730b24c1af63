import { CATALOGUE } from "../catalogue.ts";
import { type Addresses, escaped, pounds } from "./html.ts";
import { layout } from "./layout.ts";
import { frontOf, linkOf } from "./tile.ts";

const STYLE = `<style>.q0{display:flex;flex-wrap:wrap;gap:26px 16px}.q1{width:285px}.q2{display:block;height:380px;background-size:cover;background-position:50% 20%}.q1 img{width:285px;height:380px;object-fit:cover}.q3{margin-top:8px}.q4{color:#6b6159}</style>`;

/**
 * The same stock without structured data or telling class names: plain boxes with a picture, a line of words and a
 * price. Every fourth picture is a background, not an image.
 */
export function barePage(addresses: Addresses): string {
  const box = CATALOGUE.map((product, i) => {
    const source = escaped(frontOf(addresses, product.variants[0]));
    const link = linkOf({ product, round: 0 });
    const picture =
      i % 4 === 3
        ? `<div class="q2" style="background-image:url('${source}')"></div>`
        : `<img src="${source}" alt="">`;
    const was = product.was === null ? "" : `<s>${pounds(product.was)}</s> `;
    return `<div class="q1"><a href="${link}">${picture}</a><div class="q3"><a href="${link}">${escaped(product.title)}</a></div><div class="q4">${was}${pounds(product.price)}</div></div>`;
  });
  return layout("The sample room", `<h1>The sample room</h1><div class="q0">${box.join("\n")}</div>`, STYLE);
}
