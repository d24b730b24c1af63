/** A picture's file without its folder, its query and the size in its name: the same for all renditions of one photo. */
export const pictureFile = (url: string): string =>
  (url.split(/[?#]/, 1)[0] ?? "").replace(/.*\//, "").replace(/[-_@.](?:\d+x\d*|x\d+|\dx)(?=\D|$)/g, "");
