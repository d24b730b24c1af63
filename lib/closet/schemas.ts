import * as v from "valibot";
import { VISIONS, type Vision } from "../color/color-vision.ts";
import type { Oklab } from "../color/oklab.ts";
import type { Candidate } from "../fit/verdict.ts";
import type { Price } from "../page/product.ts";
import { EVIDENCE, FINISHES, type Palette, type Swatch } from "../sample/palette.ts";
import { SLOTS, type Slot } from "../words/slot.ts";
import { normaliseShares } from "./normalise-shares.ts";
import type { Correction, Piece, Wish } from "./piece.ts";

/** Characters in a name or title; the same bound as `FoundProduct.title`. */
export const NAME_LENGTH = 300;

/** Characters in a product key or id; the same bound as `FoundProduct.key`. */
export const KEY_LENGTH = 512;

/** Characters in an address; longer ones break in common servers and browsers (common practice, no source). */
export const ADDRESS_LENGTH = 2048;

/** Characters in a host name (RFC 1035, section 2.3.4, counts 255 octets with the length bytes). */
export const HOST_LENGTH = 253;

/** Swatches of one piece. */
export const SWATCHES_MOST = 6;

/** Characters in a stored data: picture; a 40 kB JPEG is about 55,000 characters in base64. */
export const PICTURE_LENGTH = 60_000;

/** OKLab a and b of any colour that a screen shows stay within ±0.33; ±0.5 leaves room for wide gamuts. */
const AXIS_MOST = 0.5;

/** The last moment a Date can hold, ms since 1970 (ECMAScript, "Time Values and Time Range"). */
const TIME_MOST = 8.64e15;

/** Raster pictures only: an SVG could carry script or fetch. */
const PICTURE = /^data:image\/(?:jpeg|png|webp|avif|gif);base64,[A-Za-z0-9+/]+={0,2}$/;

const between = (low: number, high: number, message: string) =>
  v.pipe(v.number(message), v.finite(message), v.minValue(low, message), v.maxValue(high, message));

const text = (most: number, message: string) =>
  v.pipe(
    v.string(message),
    v.transform((raw) => raw.replace(/\s+/g, " ").trim()),
    v.minLength(1, message),
    v.maxLength(most, message),
  );

const axisSchema = between(-AXIS_MOST, AXIS_MOST, "A colour's a and b lie between −0.5 and 0.5.");

export const timeSchema = v.pipe(
  between(0, TIME_MOST, "A time is given in milliseconds since 1970."),
  v.integer("A time is given in whole milliseconds."),
);

export const keySchema = v.pipe(
  v.string("The key is missing."),
  v.minLength(1, "The key is missing."),
  v.maxLength(KEY_LENGTH, `A key has at most ${KEY_LENGTH} characters.`),
);

const linkSchema = v.pipe(
  v.string("The link is no text."),
  v.maxLength(ADDRESS_LENGTH, `A link has at most ${ADDRESS_LENGTH} characters.`),
  v.regex(/^https?:\/\/[^\s]+$/i, "A link starts with http:// or https://."),
);

export const pictureSchema = v.pipe(
  v.string("The picture is no text."),
  v.maxLength(PICTURE_LENGTH, "The picture is larger than 60 kB."),
  v.regex(PICTURE, "The picture is not a JPEG, PNG, WebP, AVIF or GIF as a data: address."),
);

export const nameSchema: v.GenericSchema<unknown, string> = text(
  NAME_LENGTH,
  `The name is missing or has more than ${NAME_LENGTH} characters.`,
);

export const slotSchema: v.GenericSchema<unknown, Slot> = v.picklist(
  SLOTS,
  `The slot must be one of: ${SLOTS.join(", ")}.`,
);

export const oklabSchema: v.GenericSchema<unknown, Oklab> = v.strictTuple(
  [between(0, 1, "A colour's lightness lies between 0 and 1."), axisSchema, axisSchema],
  "A colour is three numbers: L, a and b.",
);

export const shareSchema: v.GenericSchema<unknown, number> = between(0, 1, "A share lies between 0 and 1.");

export const finishSchema = v.picklist(FINISHES, `A finish is one of: ${FINISHES.join(", ")}.`);

export const swatchSchema: v.GenericSchema<unknown, Swatch> = v.object(
  { oklab: oklabSchema, share: shareSchema, finish: v.exactOptional(finishSchema) },
  "A swatch has a colour and a share.",
);

const swatchListSchema = v.pipe(
  v.array(swatchSchema, "The swatches are missing."),
  v.maxLength(SWATCHES_MOST, `At most ${SWATCHES_MOST} swatches.`),
);

/** One to six swatches; on reading, shares are made to sum to 1. Their order is kept: the first is the statement swatch. */
export const swatchesSchema: v.GenericSchema<unknown, readonly Swatch[]> = v.pipe(
  swatchListSchema,
  v.minLength(1, "At least one swatch."),
  v.transform((swatches) => normaliseShares(swatches)),
);

export const paletteSchema: v.GenericSchema<unknown, Palette> = v.object(
  {
    swatches: v.pipe(
      swatchListSchema,
      v.transform((swatches) => normaliseShares(swatches)),
    ),
    confidence: between(0, 1, "A confidence lies between 0 and 1."),
    evidence: v.pipe(
      v.array(v.picklist(EVIDENCE, "An unknown kind of evidence."), "The evidence is missing."),
      v.maxLength(EVIDENCE.length, "Evidence is named twice."),
    ),
    reason: v.exactOptional(text(NAME_LENGTH, "The reason is missing or too long.")),
  },
  "A palette has swatches, a confidence and its evidence.",
);

export const priceSchema: v.GenericSchema<unknown, Price> = v.object(
  {
    amount: between(0, Number.MAX_SAFE_INTEGER, "A price is a number from 0."),
    currency: v.nullable(
      v.pipe(
        v.string("A currency is a code."),
        v.regex(/^[A-Z]{3}$/, "A currency is three capitals (ISO 4217)."),
      ),
    ),
  },
  "A price has an amount and a currency.",
);

export const candidateSchema: v.GenericSchema<unknown, Candidate> = v.object(
  { key: keySchema, title: nameSchema, slot: v.nullable(slotSchema), palette: paletteSchema },
  "A product has a key, a title, a slot and a palette.",
);

export const pieceSchema: v.GenericSchema<unknown, Piece> = v.object(
  {
    id: keySchema,
    name: nameSchema,
    slot: slotSchema,
    swatches: swatchesSchema,
    addedAt: timeSchema,
    picture: v.exactOptional(pictureSchema),
    productKey: v.exactOptional(keySchema),
  },
  "A piece has a name, a slot and swatches.",
);

export const wishSchema: v.GenericSchema<unknown, Wish> = v.object(
  {
    id: keySchema,
    title: nameSchema,
    slot: v.nullable(slotSchema),
    palette: paletteSchema,
    price: v.nullable(priceSchema),
    link: v.nullable(linkSchema),
    store: text(HOST_LENGTH, "The store is missing."),
    savedAt: timeSchema,
    picture: v.exactOptional(pictureSchema),
  },
  "A wish has a title, a palette and a store.",
);

export const correctionSchema: v.GenericSchema<unknown, Correction> = v.object(
  { productKey: keySchema, swatches: swatchesSchema, correctedAt: timeSchema },
  "A correction has a product and swatches.",
);

/** Null: as most people do. */
export const visionSchema: v.GenericSchema<unknown, Vision | null> = v.nullable(
  v.picklist(VISIONS, `A colour vision is one of: ${VISIONS.join(", ")}.`),
);
