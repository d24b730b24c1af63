/** Linear light, 0–1, of an encoded sRGB part, 0–1 (IEC 61966-2-1). */
export function linearOf(encoded: number): number {
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
}

/** The encoded sRGB part of linear light: the inverse of `linearOf`. */
export function encodedOf(linear: number): number {
  return linear <= 0.0031308 ? linear * 12.92 : 1.055 * linear ** (1 / 2.4) - 0.055;
}
