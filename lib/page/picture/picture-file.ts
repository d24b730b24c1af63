/** Addresses of picture files, by how they end. */
export const PICTURE_FILE = /\.(?:jpe?g|png|webp|avif|gif)(?:[?#@]|$)/i;

/** A picture's file without its folder, its query and the size in its name: the same for all renditions of one photo. */
export const pictureFile = (url: string): string =>
  (url.split(/[?#]/, 1)[0] ?? "").replace(/.*\//, "").replace(/[-_@.](?:\d+x\d*|x\d+|\dx)(?=\D|$)/g, "");
