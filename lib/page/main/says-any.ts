import { saysToBuy } from "../dom/buttons.ts";
import { plainText } from "../dom/plain-text.ts";
import { isPriceLabel } from "../money/price-label.ts";

/** What a heading says on the page of any product, or of several. */
const ABOUT_ANY =
  /^(products?|produk(te?|ter)?|produits?|productos?|produtos?|prodott[oi]|товары?|продукт|ürün|商品|상품|สินค้า|sản phẩm|محصول|منتج|المنتج|shop|store)$|^((product|item|produkt|artikel) ?-?)?(information(en)?|info|details?|descriptions?|specifications?|overview|reviews?|page|beschreibung|informationen|eigenschaften)$|^(description|détails|caractéristiques|descripción|detalles|características|descrizione|dettagli|caratteristiche|descrição|detalhes|omschrijving|kenmerken|specificaties|beskrivning|beskrivelse|opis|szczegóły|popis|описание|характеристики|опис|商品(の?(説明|詳細|情報)){1,2}|informasi( \p{L}+)?|ratings?|صفحه محصول|صفحة المنتج|상품( ?(상세|정보|설명)){1,2}|商品介绍|açıklama|الوصف|mô tả|chi tiết|(ürün )?(detay|bilgi)(lar|ler)?[ıi]?|detalle|dettaglio|detalhe|detalii|detail produk|о товаре)( (du |de |del |do |van (het )?)?(produ\p{L}+|artic\p{L}+|artikel|towaru|товара|sản phẩm))?$/iu;

/** Nor does a fact of any product, or a remark. */
const FACT =
  /^(colou?rs?|farben?|couleurs?|colores|cor(es)?|colori?|kleur|färg|kolor|barva|цвет|колір|renk|warna|màu( sắc)?|颜色|顏色|カラー|색상|sizes?|größen?|tailles?|tallas?|tamanhos?|taglie?|maat|storlek|rozmiary?|размер|розмір|beden|ukuran|kích (cỡ|thước)|尺码|尺碼|サイズ|사이즈|delivery|доставка|model) ?[:：]|^[（(][^（()）]*[)）]$|^((收藏|推[荐薦]|分享) ?)+$/;

/** Nor does what says how it is sent. */
const ABOUT_SENDING =
  /shipping|delivery|versand|lieferung|livraison|env[ií]o|frete|spedizion|verzend|bezorg|dostaw|wysyłk|frakt|fragt|toimitus|doprav|szállítás|livrare|(ücretsiz|bedava) kargo|kargo (bedava|ücret)|доставк|配送|送料|배송|giao hàng/;
/** Nor does what says that it costs less. */
const ABOUT_SAVING =
  /discount|rabatt|remise|descuento|descontos?|sconto|korting|zniżk|slev[auy]|kedvezmény|reducer[ei]|indirim|скидк|знижк|έκπτωση|割引|セール|할인|折扣|giảm giá|diskon|خصم|تخفيف|הנחה|ส่วนลด/;
/** What these are tested with: lower case, since flags cost a browser milliseconds. */
const ABOUT_DEAL = [FACT, ABOUT_SENDING, ABOUT_SAVING];
/** Nor does what says that something follows. */
export const LABEL_END = /\s*[:：]\s*$/;

/** Whether a text names a part of the page of any product, or says that one follows. */
export const namesPart = (text: string): boolean => ABOUT_ANY.test(text) || LABEL_END.test(text);

/** Whether a text is what a heading says on the page of any product: a part of it, a label, a fact, how things are sent, what is saved or to buy. */
export const saysAny = (text: string): boolean =>
  saysToBuy(text) ||
  ABOUT_DEAL.some((words) => words.test(text.toLowerCase())) ||
  isPriceLabel(text) ||
  namesPart(text);

/** The same of a heading. */
export const isAboutAny = (heading: Element): boolean => saysAny(plainText(heading.textContent));
