import { CATALOGUE, type Product, picturePath, type Variant } from "../catalogue.ts";
import { type Addresses, escaped, linkedData } from "./html.ts";
import { layout, SECTIONS } from "./layout.ts";
import { cost, tile } from "./tile.ts";

/** How many products "You may also like" shows. */
const RELATED = 4;

const sources = ({ cdnUrl }: Addresses, variant: Variant, width: number): string[] =>
  variant.pictures.map((picture) => `${cdnUrl}${picturePath(picture)}?width=${width}`);

/** The product and all its colours as one ProductGroup. */
const productGroup = (addresses: Addresses, product: Product): string =>
  linkedData({
    "@type": "ProductGroup",
    productGroupID: product.id,
    name: product.title,
    url: `${addresses.shopUrl}/product/${product.id}`,
    brand: { "@type": "Brand", name: "Pellowick & Daughters" },
    variesBy: ["https://schema.org/color"],
    hasVariant: product.variants.map((variant) => ({
      "@type": "Product",
      sku: `${product.id}-${variant.slug}`,
      name: `${product.title} (${variant.color})`,
      color: variant.color,
      image: sources(addresses, variant, 960),
      url: `${addresses.shopUrl}/product/${product.id}?colour=${variant.slug}`,
      offers: {
        "@type": "Offer",
        price: product.price.toFixed(2),
        priceCurrency: product.currency,
        availability: "https://schema.org/InStock",
      },
    })),
  });

/** Choosing a colour or a thumbnail changes the large picture without a new page. */
const SCRIPT = `<script>
const stage = document.querySelector(".stage img");
const thumbs = document.querySelector(".thumbs");
const show = (sources) => {
  stage.src = sources[0];
  thumbs.replaceChildren(...sources.map((source, i) => {
    const button = document.createElement("button");
    button.setAttribute("aria-current", String(i === 0));
    button.setAttribute("aria-label", "Picture " + (i + 1));
    const image = document.createElement("img");
    image.src = source;
    image.alt = "";
    button.append(image);
    button.onclick = () => {
      stage.src = source;
      for (const other of thumbs.children) other.setAttribute("aria-current", String(other === button));
    };
    return button;
  }));
};
for (const swatch of document.querySelectorAll(".swatches a")) swatch.addEventListener("click", (event) => {
  event.preventDefault();
  for (const other of document.querySelectorAll(".swatches a")) other.setAttribute("aria-current", String(other === swatch));
  document.querySelector(".chosen").textContent = swatch.title;
  history.replaceState(null, "", swatch.href);
  show(swatch.dataset.pictures.split(" "));
});
show(document.querySelector(".swatches a[aria-current=true]").dataset.pictures.split(" "));
</script>`;

const sizesOf = ({ slot }: Product): string => {
  if (slot === "bag" || slot === "jewellery" || slot === "accessory" || slot === "headwear") return "";
  const sizes = slot === "shoes" ? [4, 5, 6, 7] : slot === "legwear" ? ["S", "M", "L"] : [8, 10, 12, 14, 16];
  return `<span>Size</span><div class="sizes">${sizes.map((size, i) => `<label><input type="radio" name="size"${i === 1 ? " checked" : ""}>${size}</label>`).join("")}</div>`;
};

/** Others of its section first, then what comes next in the catalogue. */
const relatedTo = (product: Product): Product[] => {
  const others = CATALOGUE.filter(({ id }) => id !== product.id);
  const near = others.filter(({ slot }) => slot === product.slot);
  return [...near, ...others.filter(({ slot }) => slot !== product.slot)].slice(0, RELATED);
};

/** A product with its colours, pictures and related products. `slug`: the chosen colour, the first one otherwise. */
export function productPage(addresses: Addresses, product: Product, slug: string | null): string {
  const chosen = product.variants.find((variant) => variant.slug === slug) ?? product.variants[0];
  const section = SECTIONS.find(({ slots }) => slots.some((slot) => slot === product.slot));
  const swatches = product.variants.map(
    (variant) =>
      `<a href="?colour=${variant.slug}" title="${escaped(variant.color)}" aria-label="${escaped(variant.color)}" aria-current="${variant === chosen}" data-pictures="${escaped(sources(addresses, variant, 960).join(" "))}" style="background:${variant.dyes[0]}"></a>`,
  );
  const main = `<p class="crumbs"><a href="/">Home</a> / ${section ? `<a href="${section.path}">${escaped(section.name)}</a> / ` : ""}${escaped(product.title)}</p>
<section class="product">
<div class="thumbs"></div>
<div class="stage"><img src="${escaped(sources(addresses, chosen, 960)[0] ?? "")}" alt="${escaped(product.title)}" width="480" height="640"></div>
<div class="words"><h1>${escaped(product.title)}</h1>${cost(product)}
<span>Colour: <b class="chosen">${escaped(chosen.color)}</b></span><div class="swatches">${swatches.join("")}</div>
${sizesOf(product)}
<button class="buy">Add to basket</button>
<details open><summary>About this piece</summary><p>Cut and sewn in small runs by people we know. Our model is 1.76 m and wears a size 10.</p></details>
<details><summary>Care</summary><p>Wash cool with similar colours, dry flat, iron inside out.</p></details>
<details><summary>Delivery and returns</summary><p>Three to five days; send it back within thirty.</p></details></div>
</section>
<section class="related"><h2>You may also like</h2><ul class="tiles">
${relatedTo(product)
  .map((other) => tile(addresses, { product: other, round: 0 }))
  .join("\n")}
</ul></section>${SCRIPT}`;
  const head = `<meta property="og:type" content="product">\n${productGroup(addresses, product)}\n`;
  return layout(product.title, main, head);
}
