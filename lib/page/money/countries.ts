import { ANY_COUNTRY } from "./currency.ts";
import { dollarsOf } from "./dollars.ts";
import { namedIn } from "./named-in.ts";

/** Countries of languages spoken chiefly in one; for a page whose `lang` names none. ISO 639-1 to ISO 3166. */
const HOME: Readonly<Record<string, string>> = {
  sv: "SE",
  da: "DK",
  nb: "NO",
  nn: "NO",
  no: "NO",
  is: "IS",
  ja: "JP",
  zh: "CN",
  pl: "PL",
  cs: "CZ",
  hu: "HU",
  ro: "RO",
  bg: "BG",
  tr: "TR",
  uk: "UA",
  he: "IL",
  ko: "KR",
  th: "TH",
  vi: "VN",
  id: "ID",
};

/** The same of languages of several countries that have one money, but for a few; for a page that names none of those. */
const CHIEFLY: Readonly<Record<string, string>> = {
  ru: "RU",
  de: "DE",
  it: "IT",
  nl: "NL",
  fi: "FI",
  el: "GR",
  sk: "SK",
  sl: "SI",
  hr: "HR",
  et: "EE",
  lv: "LV",
  lt: "LT",
};

/**
 * Calling codes (ITU-T E.164, from memory) of countries whose money has a sign in common with others'. XA, which ISO 3166
 * leaves free, stands for those of the CFA franc of Central Africa, XAF.
 */
const CALLED =
  "20EG 45DK 46SE 47NO 52MX 54AR 56CL 57CO 61AU 64NZ 65SG 852HK 886TW 92PK 94LK 977NP 971AE 212MA 375BY 235XA 236XA 237XA 240XA 241XA 242XA".split(
    " ",
  );
/** A number as it is written to be called from abroad. */
const WRITTEN_NUMBER = /\+ ?\d{1,3}[ ()\d-]{7,}/;

/** What a page says at its start, in lower case, and at its foot. */
interface Said {
  readonly text: string;
  readonly foot: string;
}

/** The country of the first telephone number that a page links to or else writes, where its money shares a sign; else "". */
function calledIn(doc: Document, { text, foot }: Said): string {
  const link = doc.querySelector('[href^="tel:+"],[href*="//wa.me/"]')?.getAttribute("href");
  const written = link ?? (WRITTEN_NUMBER.exec(foot) ?? WRITTEN_NUMBER.exec(text))?.[0];
  const number = written?.replace(/\D/g, "") ?? "";
  return CALLED.find((code) => number.startsWith(code.slice(0, -2)))?.slice(-2) ?? "";
}

/** Characters of a page, from its start and from its end, in which its language and its country are looked for. */
const MOST_TEXT = 20_000;
const MOST_FOOT = 3000;
/** Characters of a script from which on a page is written in it, and letters of one language: others name it among those to choose. */
const LEAST_WRITTEN = 30;
const LEAST_LETTERS = 10;

/** Characters from the start of a page by which its script is told. */
const MOST_START = 4000;
/** Scripts of one country each; for amounts without a sign. */
const ALONE = [
  ["KR", /[가-힣]/g],
  ["JP", /[ぁ-ヿ]/g],
  ["TH", /[ก-๛]/g],
  ["IL", /[א-ת]/g],
] as const;

/** Letters that the chief language of one country has alone, or with few others. */
const LETTERS = [
  ["PL", /[ąęłńśźż]/g],
  ["CZ", /[ěřů]/g],
  ["HU", /[őű]/g],
  ["TR", /[ğış]/g],
  ["RO", /[ăîșțşţ]/g],
] as const;

/** Words of Swedish that no neighbour has; its letters are those of others, too. */
const SWEDISH = /(?<![a-zåäö])(och|för|på|är|till|våra|kundvagn|varukorg)(?![a-zåäö])/g;
const LEAST_SWEDISH = 4;

/** Letters of Vietnamese alone, but for a few of other languages' rarest. */
const VIETNAMESE = /[đơưạ-ỹ]/g;

const times = (text: string, word: RegExp): number => text.match(word)?.length ?? 0;

/** Letters that only Chinese as written in Taiwan and Hong Kong has: neither the simplified nor Japanese. */
const TRADITIONAL = /[們這個與關價實顏嗎麼會點單]/g;

/** The country in whose language a page is written that names none or English, where its money shares a sign; else "". */
function spokenIn(text: string): string {
  if (/[¥￥元]/.test(text))
    return /[ぁ-ヿ]/.test(text) ? "JP" : times(text, /[\u4e00-\u9fff]/g) >= LEAST_WRITTEN ? "CN" : "";
  const start = text.slice(0, MOST_START);
  const own = ALONE.find(([, script]) => times(start, script) >= LEAST_WRITTEN);
  if (own) return own[0];
  if (times(start, VIETNAMESE) >= LEAST_LETTERS) return "VN";
  const lettered = LETTERS.find(([, letters]) => times(start, letters) >= LEAST_LETTERS);
  if (lettered) return lettered[0];
  if (times(start, SWEDISH) >= LEAST_SWEDISH) return "SE";
  if (text.includes("$") && times(text, TRADITIONAL) >= LEAST_LETTERS)
    return text.includes("香港") ? "HK" : "TW";
  if (!/\d(,-)?\s?kr\b|\bkr\.?\s?\d/.test(text)) return "";
  if (/[äö]/.test(text)) return "SE";
  if (!/[æø]/.test(text)) return "";
  return times(text, /\b(af|kurv|køb|til dig|nyhed)\b/g) >=
    times(text, /\b(av|handlekurv|kjøp|til deg|nyhet)\b/g)
    ? "DK"
    : "NO";
}

/** Words of Spanish, and of English, in a page of a shop; so many of the first say that it is written in it. */
const SPANISH =
  /\b(el|los|las|del|para|con|tu|más|envío|envios|carrito|comprar|añadir|agregar|precio|inicio|mujer|hombre|ayuda|contacto|tienda)\b/g;
const ENGLISH = /\b(the|and|of|for|with|your|to)\b/g;
const LEAST_SPANISH = 4;

/** Whether a page whose money is in dollars of some kind is written in Spanish, though it names another language or none. */
function isInSpanish(text: string): boolean {
  if (!text.includes("$")) return false;
  const spanish = times(text, SPANISH);
  return spanish >= LEAST_SPANISH && spanish > times(text, ENGLISH);
}

/** Countries that share a sign with few others, as pages name them; XO stands for those of the CFA franc of West Africa. */
const NEIGHBOURS: Readonly<Record<string, RegExp>> = {
  XA: /camer(oun|oon)|gabon|tchad|congo|centrafri/i,
  XO: /s[ée]n[ée]gal|ivoire|ivory coast|\bmali\b|b[ée]nin\b|togo\b|burkina/i,
  IN: /\bindia\b/i,
  PK: /pakistan/i,
  LK: /sri lanka/i,
  NP: /nepal/i,
  BY: /беларус|belarus|минск/i,
  RU: /росси[яию]|москв|петербург/i,
};

/** Countries that count in pesos, or in dollars of their own or others', as pages in Spanish name them. */
const COUNTRIES: Readonly<Record<string, RegExp>> = {
  MX: /méxico|pesos mexicanos/i,
  CO: /colombia/i,
  AR: /argentin[ao]/i,
  CL: /chile(n[oa]s?)?(?![a-z])/i,
  US: /ecuador|el salvador|puerto rico|panamá|honduras|guatemala|nicaragua|costa rica|venezuela/i,
  DO: /rep(ú|u|\.\s?)(blica)?\s?dominicana|santo domingo/i,
};

/** ISO 3166 codes of the countries that the language, the address, the telephone number and the foot of a page point at. */
export function countriesOf(doc: Document, language: string): readonly string[] {
  const [named = "", region = ""] = language.toLowerCase().split(/[-_]/);
  const all = doc.body.textContent;
  const said = { text: all.slice(0, MOST_TEXT).toLowerCase(), foot: all.slice(-MOST_FOOT) };
  const spoken = (named === "" || named === "en") && region === "" && isInSpanish(said.text) ? "es" : named;
  const domain = doc.location?.hostname.split(".").at(-1) ?? "";
  const inEnglish = spoken === "" || spoken === "en";
  const told = [
    region,
    domain.length === 2 ? domain : "",
    HOME[spoken] ?? "",
    calledIn(doc, said),
    inEnglish ? spokenIn(said.text) : "",
    namedIn(said.foot, spoken === "es" ? COUNTRIES : NEIGHBOURS),
    inEnglish && said.text.includes("$") ? dollarsOf(doc) : "",
  ].filter(Boolean);
  if (told.length > 0) return told.map((code) => code.toUpperCase());
  const chiefly = spoken === "es" ? ANY_COUNTRY : CHIEFLY[spoken];
  return chiefly ? [chiefly] : [];
}
