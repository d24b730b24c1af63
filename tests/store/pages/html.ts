/** Where the shop and its pictures are. */
export interface Addresses {
  readonly shopUrl: string;
  readonly cdnUrl: string;
}

/** Text made safe for markup and for attributes in double quotes. */
export const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/** Structured data; `<` is kept out of the script by its escape. */
export const linkedData = (data: object): string =>
  `<script type="application/ld+json">${JSON.stringify({ "@context": "https://schema.org", ...data }).replaceAll("<", "\\u003c")}</script>`;

export const pounds = (amount: number): string => `£${amount.toFixed(2)}`;
