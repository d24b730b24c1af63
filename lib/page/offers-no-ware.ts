import { buttonsIn, buys } from "./buttons.ts";
import type { Context } from "./context.ts";
import { leadsToProduct } from "./link.ts";
import { headingText, linesOf, nameKey } from "./plain-text.ts";
import type { FoundProduct } from "./product.ts";

/** Characters of a tile that are read, and links and buttons of it. */
const MOST_TEXT = 600;
const MOST_CALLS = 12;
/** A call on a button or a link has fewer characters, and so has a heading that says what a page is about. */
const LONGEST_CALL = 32;
const LONGEST_HEADING = 40;

/** An amount from here on is a salary, a house or a sum collected, in currencies whose unit buys about a coffee. No source. */
const FORTUNE = 15_000;
const STRONG = /^(EUR|GBP|USD|CHF|CAD|AUD|NZD)$/;

/** What is asked of a visitor who is to come, work, give or sign up, in the ten languages of slot words. */
const CALL =
  /^[^\p{L}]*(apply|(re)?book\b|reserve|enrol|register|rsvp|join|sign up|donate|redeem|(start|try) .*(trial|free)|(get|buy|acquista|acheter|comprar|köp|kup) .{0,5}(tickets|bigliett|billet|entradas|biljett|bilet)|tickets? (kaufen|sichern|kopen)|(zum |les |i )?(tickets?|billets?|bilety?|biljetter|biglietti|bilhetes|ingressos|entradas|kaarten)\b|check avail|bewerben|jetzt (buchen|bewerben|anmelden|spenden)|buchen|reserv|anmelden|spenden|einlösen|platz sichern|postuler|réserver|s.inscrire|je (donne|réserve|m.inscris)|faire un don|inscr[ií]|solicitar|donar|prenota|iscriviti|candidati|dona\b|candidatar|agendar|boek\b|boek nu|solliciteer|schrijf je|doneer|boka\b|ansök|anmäl|rezerwuj|zarezerwuj|zapisz się|aplikuj|wesprzyj|予約|応募|申し?込|チケット|寄付)/iu;

/** Parts of an address under which no wares lie. */
const PATH =
  /\/(whats-on|tickets?|jobs?|careers?|vacanc\w+|karriere|stellen\w*|emplois?|courses?|kurse?|cours|cursos?|workshops?|ateliers?|classes|rooms?|zimmer|chambres|habitaciones|camere|kamers|stays?|hotels?|property|properties|immobilien|book(ing)?s?|apply|donat\w+|spenden?|give|appeals?|projects?|repairs?|services?|team|stylists?|press|rewards?|membership|recip\w+|rezepte|recettes|recetas|ricette|menus?|speisekarte|shipping|delivery|versand|livraison|envios?|spedizioni|orders?|signup|pricing|plans?)(\/|\.\w+$|$)/i;

/** Headings of pages that show pictures and amounts and sell nothing; nothing or a binding word follows. */
const HEADING =
  /^((our|the|your|la|le|il|el|unsere?|nos|nuestr[ao]s|nossos?|onze|våra|nasze) )?(menu|lunch|dinner|brunch|drinks|speisekarte|getränke|carte|carta|meny|meniu|メニュー|careers?|jobs|karriere|stellen\p{L}*|rooms?|zimmer|chambres|courses?|kurse|cours|cursos|corsi|cursussen|kurser|kursy|events?|veranstaltungen|événements|eventos|eventi|evenementen|evenemang|wydarzenia|what.s on|delivery|shipping|versand\p{L}*|livraison|envíos?|spedizion[ei]|entregas?|verzending|frakt|dostawa|配送|rewards?|press|presse|prensa|stampa|imprensa|pers|prasa|team|équipe|equipo|squadra|equipe|zespół|stylists?|pricing|plans|tarife?s?|repairs?|reparatur\p{L}*|services?|orders?|stays?|tickets?|donat\p{L}+|採用\p{L}*|送料)([^\p{L}]*$|,? (&|and|und|et|y|e|en|och|i|at|with|from|for|bei|chez|in) )/iu;

/** An amount with its sign or code, as far as the words behind it. */
const AMOUNT =
  "\\d[^\\p{L}\\d]{0,3}(kr|zł|kč|ft|tl|lei|euro?|usd|chf|sek|nok|dkk)?[^\\p{L}\\d]{0,8}(\\/|per|an?|pro|par|por|al|all.?|alla|à la|za|i) ?";

/** What a time, a place or work costs is said by the night, the hour, the head or the year. */
const RATE = new RegExp(
  `${AMOUNT}(night|hour|hr|person|guest|head|year|annum|nacht|stunde|jahr|nuit|heure|personne|an|noche|hora|persona|año|notte|ora|anno|noite|pessoa|ano|persoon|uur|jaar|natt|timme|år|noc|osobę|godzinę|rok)(?!\\p{L}{2})|\\bp\\.a\\.|\\b(per|pro|par) (night|nacht|nuit|annum)\\b|[円¥\\d] ?/ ?(泊|名|人|時間)|時給|月給|年収`,
  "iu",
);

/** Facts of stays, work, events, collections and cars. */
const FACT =
  /\b(bedrooms?|sleeps \d|\d+ (guests|backers|supporters)|raised (of|so far)|pledged|full[- ]time|part[- ]time|vollzeit|teilzeit|temps (plein|partiel)|jornada completa|tempo (pieno|integral)|voltijd|deeltijd|heltid|deltid|pełny etat)\b|\b\d{1,2}([:.]\d\d)? ?([ap]\.?m\b|uhr\b)|\d[.,\d ]{3,} km\b|\d ?(m²|m2\b|sq ?ft)|(\b([01]?\d|2[0-3]):[0-5]\d\b(?!:)[^:]*){2}|正社員|アルバイト/i;

/** What is paid by the month; clothes are too, where their picture leads to them. */
const MONTHLY = new RegExp(
  `${AMOUNT}(mo|month|monat|mois|mes|mese|mês|maand|mån|månad|miesiąc|mies)(?!\\p{L}{2})|月額`,
  "iu",
);

const pathOf = (address: string | null): string => URL.parse(address ?? "")?.pathname ?? "";

/** Whether a link or a button of a tile, other than its name, asks for something else than to buy. */
function callsElsewhere({ root, title }: FoundProduct): boolean {
  const name = nameKey(title);
  return [...root.querySelectorAll("a,button")].slice(0, MOST_CALLS).some(({ textContent }) => {
    const call = textContent.trim();
    return call.length < LONGEST_CALL && CALL.test(call) && !name.includes(nameKey(call));
  });
}

/**
 * Whether a tile with a picture and an amount offers a time, a place, work or a gift, or a page about such things does.
 * What is put into a basket, lies where products lie or is described as a product is a ware all the same.
 */
export function offersNoWare(one: FoundProduct, { doc }: Context): boolean {
  const { root, link, price, evidence, image } = one;
  if (evidence.includes("structured") || leadsToProduct(link ?? "") || buttonsIn(root).some(buys))
    return false;
  const text = linesOf(root, MOST_TEXT);
  const h1 = doc.querySelector("h1");
  const heading = h1 ? headingText(h1) : "";
  return (
    (price !== null && price.amount >= FORTUNE && STRONG.test(price.currency ?? "")) ||
    PATH.test(pathOf(link).replace(/[^/]+\/?$/, "")) ||
    PATH.test(pathOf(doc.URL)) ||
    (heading.length < LONGEST_HEADING && HEADING.test(heading)) ||
    RATE.test(text) ||
    (!image?.closest("a[href]") && MONTHLY.test(text)) ||
    FACT.test(text) ||
    root.querySelector("time") !== null ||
    callsElsewhere(one)
  );
}
