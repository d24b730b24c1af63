import { encodedOf, linearOf } from "../color/srgb-curve.ts";

/** Linear light of red, green and blue, 0–1 each. */
export type Light = readonly [red: number, green: number, blue: number];

/** Factors on linear red, green and blue. */
export type WhiteCardGains = Light;

/** 0–255. From here on the camera may have cut a channel off, so that its true value is unknown. Common practice, no source. */
export const CLIPPED = 250;

/**
 * The pixels as they would have come out in neutral light: each channel's linear light times its gain (J. von Kries, 1902, in the
 * camera's own channels). New pixels, RGBA as given; transparency stays, what gets brighter than white is cut off.
 *
 * A channel that the camera had cut off was at least as bright as it says, so it is taken to be no darker than the brightest of
 * the others: a blown-out white stays white instead of turning into the lamp's opposite.
 *
 * What remains: one factor for each channel is exact only where the light tints each channel by itself. Real lamps and
 * cameras mix the channels. Worked out for the 24 ColorChecker colours in the light of a bulb (CIE A, Bradford), it brings
 * CIEDE2000 from 17 on the mean and 25 at most to 4 and 9, saturated greens, reds and oranges last. A second light, shade, and colours that
 * change with the lamp's spectrum (metamerism) are not put right at all.
 */
export function balanced(data: Uint8ClampedArray, gains: WhiteCardGains): Uint8ClampedArray {
  const tables = gains.map((gain) =>
    Uint8ClampedArray.from({ length: 256 }, (_, value) => {
      const linear = gain * linearOf(value / 255);
      return 255 * encodedOf(Math.min(1, linear));
    }),
  );
  const out = new Uint8ClampedArray(data);
  for (let at = 0; at + 3 < data.length; at += 4) {
    let known = -1;
    for (const [channel, table] of tables.entries()) {
      const value = data[at + channel] ?? 0;
      const after = table[value] ?? 0;
      out[at + channel] = after;
      if (value < CLIPPED) known = Math.max(known, after);
    }
    const least = known < 0 ? 255 : known;
    for (let channel = 0; channel < 3; channel++) {
      if ((data[at + channel] ?? 0) >= CLIPPED) out[at + channel] = Math.max(out[at + channel] ?? 0, least);
    }
  }
  return out;
}
