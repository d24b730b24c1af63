import { readWhiteCard } from "../../lib/sample/white-card.ts";
import type { WhiteCardGains } from "../../lib/sample/white-card-balance.ts";
import type { Paint } from "./painted.ts";

/** IEC 61966-2-1. */
const linear = (value: number): number => {
  const encoded = value / 255;
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
};
/** Of linear light. */
export const luminanceOf = ([r, g, b]: Paint): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;
/** Linear light of an 8-bit colour. */
export const lightOf = (paint: Paint): Paint => paint.map(linear) as unknown as Paint;

/** What a spot gives; throws where it cannot serve. */
export const gainsOf = (...args: Parameters<typeof readWhiteCard>): WhiteCardGains => {
  const reading = readWhiteCard(...args);
  if ("gains" in reading) return reading.gains;
  throw new Error(reading.message);
};
