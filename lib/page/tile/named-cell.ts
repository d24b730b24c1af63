import { plainText } from "../dom/plain-text.ts";

/** What the head of a table says above names. Common practice, no source. */
const NAME_HEAD =
  /^((product|item|article|produkt|artikel|ürün) ?)?(name|title|bezeichnung|titel|titre|nom|désignation|libellé|nombre|título|nome|titolo|denominazione|naam|namn|benämning|nazwa|tytuł|název|názov|название|наименование|назва|adı|tên)$|^(products?|items?|articles?|produkte?|artikel|produits?|productos?|artículos?|produtos?|prodott[oi]|articol[oi]|produkty?|towary?|товары?|ürün|sản phẩm|tên (sản phẩm|hàng)|nama (produk|barang)|商品名?|品名|상품명?|제품명|商品名称|اسم المنتج|שם המוצר)$/i;

/** The cell of a table's row that stands under a head for names and has one, or null. */
export function namedCell(row: Element): Element | null {
  const head = row.tagName === "TR" ? row.closest("table")?.querySelector("tr") : null;
  if (!head || head === row || head.childElementCount !== row.childElementCount) return null;
  const at = [...head.children].findIndex((cell) => NAME_HEAD.test(plainText(cell.textContent)));
  const cell = row.children[at];
  return cell && /\p{L}/u.test(cell.textContent) ? cell : null;
}
