import * as v from "valibot";
import { ADDRESS_LENGTH, candidateSchema, PICTURE_LENGTH, priceSchema } from "../../closet/schemas.ts";
import type { PageSummary, SummaryProduct, VerdictBrief } from "../../link/messages.ts";

/** Products listed of one page, at most; a page that sends more has the rest left out. */
export const PRODUCTS_MOST = 2000;

/** Characters in the short words of a brief. */
const WORDS_LENGTH = 600;

const wordsSchema = v.pipe(v.string(), v.maxLength(WORDS_LENGTH));
const addressSchema = v.pipe(v.string(), v.maxLength(ADDRESS_LENGTH), v.regex(/^https?:\/\//i));
const pictureSchema = v.pipe(
  v.string(),
  v.maxLength(PICTURE_LENGTH),
  v.regex(/^(?:https?:\/\/|data:image\/(?:jpeg|png|webp|avif|gif)[;,])/i),
);
const timeSchema = v.nullable(v.number());

const briefSchema: v.GenericSchema<unknown, VerdictBrief> = v.object({
  key: wordsSchema,
  headline: wordsSchema,
  kind: v.picklist([
    "owned",
    "duplicate",
    "set",
    "looks",
    "goes",
    "neutral-only",
    "nothing",
    "empty-closet",
    "unreadable",
  ]),
  count: v.pipe(v.number(), v.integer(), v.minValue(0)),
  names: v.array(wordsSchema),
});

const productSchema: v.GenericSchema<unknown, SummaryProduct> = v.object({
  candidate: candidateSchema,
  role: v.picklist(["main", "tile"]),
  price: v.fallback(v.nullable(priceSchema), null),
  image: v.fallback(v.nullable(pictureSchema), null),
  link: v.fallback(v.nullable(addressSchema), null),
  brief: v.nullable(briefSchema),
});

/** Products that do not fit are left out and each key is kept once, so that one odd tile never hides the page. */
const productsSchema = v.pipe(
  v.array(v.unknown()),
  v.transform((raw): readonly SummaryProduct[] => {
    const byKey = new Map<string, SummaryProduct>();
    for (const one of raw.slice(0, PRODUCTS_MOST)) {
      const parsed = v.safeParse(productSchema, one);
      const key = parsed.success ? parsed.output.candidate.key : null;
      if (parsed.success && key !== null && !byKey.has(key)) byKey.set(key, parsed.output);
    }
    return [...byKey.values()];
  }),
);

/** What a page script sends: it lives beside a foreign page, so that nothing it says is taken on trust. */
export const pageSummarySchema: v.GenericSchema<unknown, PageSummary> = v.object({
  url: addressSchema,
  kind: v.picklist(["product", "listing", "none"]),
  state: v.picklist(["finding", "reading", "done"]),
  products: productsSchema,
  timings: v.object({ found: timeSchema, firstBadge: timeSchema, lastBadge: timeSchema }),
});
