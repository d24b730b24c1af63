/** What sets of icons call signs of money. */
const ICON =
  /(?:fa|bi-currency|mdi-currency|ti-currency|bx|icon)-(?:indian-|turkish-)?(rupee|inr|dollar|usd|euro|eur|pound|gbp|sterling|yen|jpy|won|krw|ruble|rub|lira|try|naira|peso|shekel|hryvnia|toman)(?![a-z])/;
const ICONS =
  '[class*="fa-"],[class*="bi-currency"],[class*="mdi-currency"],[class*="ti-currency"],[class*="bx-"],[class*="icon-"]';

const SIGNS: Readonly<Record<string, string>> = {
  rupee: "₹",
  dollar: "$",
  euro: "€",
  pound: "£",
  sterling: "£",
  yen: "¥",
  won: "₩",
  ruble: "₽",
  lira: "₺",
  naira: "₦",
  peso: "₱",
  shekel: "₪",
  hryvnia: "₴",
};

/** Icons looked at in one element. */
const MOST_ICONS = 8;

/** The sign of money, or the code, that an element shows as an icon; "" where it shows none. */
export function iconSign(element: Element): string {
  const icons = element.querySelectorAll(ICONS);
  for (let i = -1; i < Math.min(icons.length, MOST_ICONS); i++) {
    const one = icons[i] ?? element;
    const name = ICON.exec(one.getAttribute("class") ?? "")?.[1];
    if (name) return SIGNS[name] ?? name;
  }
  return "";
}
