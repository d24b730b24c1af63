import { nearest, parentOf } from "./dom/ancestors.ts";
import { namesMoney } from "./money/scan-money.ts";
import { PICTURES } from "./picture/pictures.ts";

/** Levels above an added node within which its tile is looked for: a price that comes late has its picture nearby. */
const LEVELS = 6;
/** Characters within which money is looked for; the text of one tile is shorter. */
const MOST_TEXT = 3000;

const shows = (scope: Element): boolean => scope.matches(PICTURES) || scope.querySelector(PICTURES) !== null;
const costs = (scope: Element): boolean => namesMoney(scope.textContent.slice(0, MOST_TEXT));

/** The element to look over where this one was added: with a picture and a price, else its pictures; null where neither came. */
function scopeAround(added: Element): Element | null {
  const pictured = added.shadowRoot !== null || shows(added);
  if (!pictured && !costs(added)) return null;
  let scope: Element | null = added;
  for (let level = 0; scope && level < LEVELS; level++, scope = parentOf(scope)) {
    if (level > 0 && scope.textContent.length > MOST_TEXT) break;
    if (shows(scope) && costs(scope)) return scope;
  }
  return pictured ? added : null;
}

/** The elements to look over where these were added, none inside another. */
export function* scopesAround(
  doc: Document,
  added: readonly Element[],
): Generator<undefined, readonly Element[], undefined> {
  const scopes = new Set<Element>();
  for (const element of added) {
    yield;
    const scope = element.isConnected ? scopeAround(element) : null;
    if (scope && scope !== doc.body && scope !== doc.documentElement) scopes.add(scope);
  }
  return [...scopes].filter((scope) => !nearest(parentOf(scope), (up) => scopes.has(up)));
}
