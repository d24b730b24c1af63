import type { Photo } from "./photo.ts";
import { at, intAt } from "./plane.ts";

/** Photos are compared as so many fields a side: coarse enough that neither a rendition's size nor its grain counts. */
const FIELDS = 12;
/**
 * sRGB codes, mean over fields and channels, below which two pictures are one photo. On 296 generated photos a rendition of 60
 * pixels a side lies 0.6 from the whole one, 1.8 at most; another photo of the same product 5.0 at least (own measurement).
 */
const ONE_PHOTO = 3.5;

/** Whether two pictures are renditions of one photo: such a second one is no second witness. */
export function samePhoto(a: Photo, b: Photo): boolean {
  const [p, q] = [fieldsOf(a), fieldsOf(b)];
  const apart = p.reduce((sum, value, i) => sum + Math.abs(value - at(q, i)), 0);
  return apart < ONE_PHOTO * p.length;
}

/** Mean red, green and blue of each field, transparent pixels as black. */
function fieldsOf({ data, width, height }: Photo): Float32Array {
  const fields = new Float32Array(3 * FIELDS * FIELDS);
  const counts = new Int32Array(FIELDS * FIELDS);
  for (let i = 0; i < data.length; i += 4) {
    const [x, y] = [(i / 4) % width, Math.floor(i / 4 / width)];
    const field = FIELDS * Math.floor((FIELDS * y) / height) + Math.floor((FIELDS * x) / width);
    counts[field] = intAt(counts, field) + 1;
    for (let c = 0; c < 3; c++) fields[3 * field + c] = at(fields, 3 * field + c) + (data[i + c] ?? 0);
  }
  return fields.map((sum, i) => sum / Math.max(1, intAt(counts, Math.floor(i / 3))));
}
