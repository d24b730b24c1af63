/** Everything the browser tests of this room call, as one script. */
export { asCanvas } from "../../lib/pixels/canvas-of.ts";
export { fetchPicture, PICTURE_LIMIT } from "../../lib/pixels/fetch-picture.ts";
export { pictureReader } from "../../lib/pixels/picture-reader.ts";
export { pixelsOfBlob } from "../../lib/pixels/pixels-of-blob.ts";
export { pixelsOfImage } from "../../lib/pixels/pixels-of-image.ts";
export { pixelsOfSnapshot } from "../../lib/pixels/pixels-of-snapshot.ts";
export { pixelsWithin } from "../../lib/pixels/pixels-within.ts";
export { sizeInFile } from "../../lib/pixels/size-in-file.ts";
export {
  THUMBNAIL_LIMIT,
  THUMBNAIL_SIDE,
  thumbnailOf,
  thumbnailOfImage,
} from "../../lib/pixels/thumbnail-of.ts";
