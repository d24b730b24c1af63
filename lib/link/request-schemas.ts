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
import type { KeepRequest, WorkerRequestName, WorkerRequests } from "./messages.ts";

/** Products in one request; more than any page shows at once, few enough to answer well within a worker's life. */
const BATCH_MOST = 600;

/** Characters of a picture's address: a data: thumbnail is the longest that is sent. */
const PICTURE_ADDRESS_LENGTH = 60_000;

/** Characters of the page's own words about a product's colour. */
const TEXT_LENGTH = 2_000;

const key = v.pipe(v.string(), v.minLength(1), v.maxLength(KEY_LENGTH));
const address = v.pipe(v.string(), v.regex(/^https?:\/\//i), v.maxLength(ADDRESS_LENGTH));
const pictureAddress = v.pipe(v.string(), v.minLength(1), v.maxLength(PICTURE_ADDRESS_LENGTH));
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
    products: v.pipe(v.array(key), v.maxLength(BATCH_MOST)),
    pictures: v.pipe(v.array(pictureAddress), v.maxLength(BATCH_MOST)),
  }),
  remember: v.object({
    entries: v.pipe(
      v.array(v.object({ picture: pictureAddress, palette: paletteSchema })),
      v.maxLength(BATCH_MOST),
    ),
  }),
  readPicture: v.object({
    url: address,
    slot: v.nullable(slotSchema),
    text: v.pipe(v.string(), v.maxLength(TEXT_LENGTH)),
  }),
  judge: candidates,
  explain: candidates,
  saveWish: keepRequest,
  dropWish: v.object({ id: key }),
  ownPiece: keepRequest,
  correct: v.object({ productKey: key, swatches: v.pipe(v.array(swatchSchema), v.maxLength(SWATCHES_MOST)) }),
  switchOff: v.object({ origin: v.pipe(v.string(), v.regex(/^https?:\/\/[^/]+$/)) }),
};
