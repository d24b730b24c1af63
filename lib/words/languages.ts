import { de } from "./languages/de.ts";
import { en } from "./languages/en.ts";
import { es } from "./languages/es.ts";
import { fr } from "./languages/fr.ts";
import { it } from "./languages/it.ts";
import { ja } from "./languages/ja.ts";
import { nl } from "./languages/nl.ts";
import { pl } from "./languages/pl.ts";
import { pt } from "./languages/pt.ts";
import { sv } from "./languages/sv.ts";

/** The languages whose slot and colour words are known, by ISO 639-1 code. */
export const LANGUAGES = { en, de, fr, es, it, nl, pt, sv, pl, ja } as const;

export type Language = keyof typeof LANGUAGES;

/** Their codes; where nothing else decides between two, the earlier wins. */
export const LANGUAGE_CODES = Object.keys(LANGUAGES) as readonly Language[];
