import * as v from "valibot";
import {
  ADDRESS_LENGTH,
  candidateSchema,
  KEY_LENGTH,
  paletteSchema,
  priceSchema,
  SWATCHES_MOST,
  slotSchema,
  swatchSchema,
} from "../closet/schemas.ts";
import { SAMPLE_SIDE } from "../pixels/pixels.ts";
import { type KeepRequest, PART_NAMES, type WorkerRequestName, type WorkerRequests } from "./messages.ts";

/** Products in one request; more than any page shows at once, few enough to answer well within a worker's life. */
const BATCH_MOST = 600;

/** Characters of a picture's address: a data: thumbnail is the longest that is sent. */
const PICTURE_ADDRESS_LENGTH = 60_000;

/** Characters of the page's own words about a product's colour. */
const TEXT_LENGTH = 2_000;

/** Texts that may say where a product is worn: title, category, address, heading. */
const SLOT_TEXTS_MOST = 4;

/** Further photos of a product in one request: as many as a page's script looks at. */
const OTHERS_MOST = 3;

const key = v.pipe(v.string(), v.minLength(1), v.maxLength(KEY_LENGTH));
const address = v.pipe(v.string(), v.regex(/^https?:\/\//i), v.maxLength(ADDRESS_LENGTH));
const pictureAddress = v.pipe(v.string(), v.minLength(1), v.maxLength(PICTURE_ADDRESS_LENGTH));
const text = v.pipe(v.string(), v.maxLength(TEXT_LENGTH));
const side = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(SAMPLE_SIDE));
const pixels = v.pipe(
  v.object({ data: v.instance(Uint8ClampedArray), width: side, height: side }),
  v.check(
    ({ data, width, height }) => data.length === 4 * width * height,
    "The pixels do not fit their sizes.",
  ),
);
const candidates = v.object({ candidates: v.pipe(v.array(candidateSchema), v.maxLength(BATCH_MOST)) });

const keepRequest: v.GenericSchema<unknown, KeepRequest> = v.object({
  candidate: candidateSchema,
  price: v.nullable(priceSchema),
  link: v.nullable(address),
  pageUrl: address,
  picture: v.nullable(pictureAddress),
});

/** The shape of every request the worker answers. */
export const requestSchemas: {
  readonly [N in WorkerRequestName]: v.GenericSchema<unknown, WorkerRequests[N]["request"]>;
} = {
  recall: v.object({
    products: v.pipe(
      v.array(
        v.object({ key, slotTexts: v.pipe(v.array(text), v.maxLength(SLOT_TEXTS_MOST)), language: text }),
      ),
      v.maxLength(BATCH_MOST),
    ),
    pictures: v.pipe(v.array(pictureAddress), v.maxLength(BATCH_MOST)),
  }),
  remember: v.object({
    entries: v.pipe(
      v.array(v.object({ picture: pictureAddress, palette: paletteSchema })),
      v.maxLength(BATCH_MOST),
    ),
  }),
  samplePicture: v.object({
    pixels,
    others: v.pipe(v.array(pixels), v.maxLength(OTHERS_MOST)),
    slot: v.nullable(slotSchema),
    text,
  }),
  readPicture: v.object({
    url: address,
    slot: v.nullable(slotSchema),
    text,
  }),
  judge: candidates,
  explain: candidates,
  saveWish: keepRequest,
  dropWish: v.object({ id: key }),
  ownPiece: keepRequest,
  correct: v.object({ productKey: key, swatches: v.pipe(v.array(swatchSchema), v.maxLength(SWATCHES_MOST)) }),
  bringPart: v.object({ name: v.picklist(PART_NAMES) }),
  switchOff: v.object({ origin: v.pipe(v.string(), v.regex(/^https?:\/\/[^/]+$/)) }),
};
