import * as v from "valibot";
import { oklabFromRgb8 } from "../color/convert.ts";
import type { Oklab } from "../color/oklab.ts";
import type { Swatch } from "../sample/palette.ts";
import { normaliseShares } from "./normalise-shares.ts";
import {
  finishSchema,
  keySchema,
  nameSchema,
  oklabSchema,
  pictureSchema,
  SWATCHES_MOST,
  shareSchema,
  slotSchema,
  timeSchema,
} from "./schemas.ts";

const HEX = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i;

/** A colour by hand: six hexadecimal digits, sRGB. */
const hexSchema: v.GenericSchema<unknown, Oklab> = v.pipe(
  v.string("A hex colour is written like #c8102e."),
  v.regex(HEX, "A hex colour is written like #c8102e."),
  v.transform((hex) => {
    const [r = 0, g = 0, b = 0] = (HEX.exec(hex) ?? []).slice(1).map((pair) => Number.parseInt(pair, 16));
    return oklabFromRgb8(r, g, b);
  }),
);

const COLOR_MISSING = "A swatch needs a colour: hex like #c8102e, or oklab as three numbers.";

const fileSwatchSchema: v.GenericSchema<unknown, Swatch> = v.pipe(
  v.object(
    {
      hex: v.exactOptional(hexSchema),
      oklab: v.exactOptional(oklabSchema),
      /** Swatches without a share count as equal parts. */
      share: v.optional(shareSchema, 1),
      finish: v.exactOptional(finishSchema),
    },
    COLOR_MISSING,
  ),
  v.rawTransform(({ dataset, addIssue, NEVER }): Swatch => {
    const { hex, oklab = hex, share, finish } = dataset.value;
    if (oklab) return { oklab, share, ...(finish && { finish }) };
    addIssue({ message: COLOR_MISSING });
    return NEVER;
  }),
);

/** A piece as a file may give it: a name, a slot and one to six swatches are enough. */
export const filePieceSchema = v.object(
  {
    id: v.exactOptional(keySchema),
    name: nameSchema,
    slot: slotSchema,
    swatches: v.pipe(
      v.array(fileSwatchSchema, "The swatches are missing."),
      v.minLength(1, "At least one swatch."),
      v.maxLength(SWATCHES_MOST, `At most ${SWATCHES_MOST} swatches.`),
      v.transform((swatches) => normaliseShares(swatches)),
    ),
    addedAt: v.exactOptional(timeSchema),
    picture: v.exactOptional(pictureSchema),
    productKey: v.exactOptional(keySchema),
  },
  "A piece has a name, a slot and swatches.",
);

export type FilePiece = v.InferOutput<typeof filePieceSchema>;
