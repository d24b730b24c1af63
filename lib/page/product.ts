/** A price as the page states it. `currency` is an ISO 4217 code, or IRT for Iranian tomans; null where the page does not say. */
export interface Price {
  readonly amount: number;
  readonly currency: string | null;
}

/** `main`: the product a product page is about; `tile`: one of several on offer. */
export type ProductRole = "main" | "tile";

/** What a page is: one product, a listing, or neither. */
export type PageKind = "product" | "listing" | "none";

/** A product as found in a document, with the elements it is drawn by. */
export interface FoundProduct {
  readonly role: ProductRole;
  /** Same product, same key, on every visit: its link, else its picture, else its title. At most 512 characters. */
  readonly key: string;
  /** Plain text, white space folded, at most 300 characters. */
  readonly title: string;
  readonly price: Price | null;
  /** Absolute http(s) address, or null. */
  readonly link: string | null;
  /** Picture addresses, best first, absolute http(s) or data:image; never empty unless `image` is an element with a picture. */
  readonly images: readonly string[];
  /** What the page's data says of it; "" where it says nothing. Raw text. */
  readonly told: { readonly category: string; readonly color: string };
  /** What the page is a list of: its main heading and breadcrumbs. Raw text. */
  readonly subject: string;
  /** The page's language as it declares it (BCP 47), or "": settles words that two languages share. */
  readonly language: string;
  /** The element that shows the picture (img, or an element with a background picture); null while there is none. */
  readonly image: Element | null;
  /** The smallest element that holds the whole product; where it has none of its own, the part with the picture. */
  readonly root: Element;
  /** What it is made of: the root, as a rule. */
  readonly parts: readonly Element[];
  /** Which evidence found it, strongest first. */
  readonly evidence: readonly ("structured" | "markup" | "layout")[];
}

/** Everything found in a document. */
export interface FoundPage {
  readonly kind: PageKind;
  readonly products: readonly FoundProduct[];
}
