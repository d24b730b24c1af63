import { expected, type PageCase } from "./page-case.ts";

const PIXEL = "data:image/gif;base64,R0lGODlhAQABAAAAACH5BAEKAAEALAAAAAABAAEAAAICTAEAOw==";
const DRAWING = "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 3 4'/%3E";

const withPictures = (name: string, camp: string, skirt: string): PageCase => ({
  name,
  body: `<ul><li><a href="/p/camp">${camp}</a><h3>Camp shirt</h3><span>£49</span></li><li><a href="/p/skirt">${skirt}</a><h3>Midi skirt</h3><span>£69</span></li></ul>`,
  kind: "listing",
  products: expected("Camp shirt | 49 | GBP | camp", "Midi skirt | 69 | GBP | skirt"),
});

/** How pictures are written, shown late, or not shown as what they are. */
export const PICTURE_CASES: readonly PageCase[] = [
  withPictures(
    "one-pixel stand-in, real address in data-src",
    `<img src="${PIXEL}" data-src="/i/camp.jpg" width="200" height="260">`,
    `<img src="${PIXEL}" data-src="/i/skirt.jpg" width="200" height="260">`,
  ),
  withPictures(
    "drawn stand-in, real addresses in data-srcset",
    `<img src="${DRAWING}" data-srcset="/i/camp-200.jpg 200w, /i/camp-800.jpg 800w" width="200" height="260">`,
    `<img src="${DRAWING}" data-srcset="/i/skirt-200.jpg 200w, /i/skirt-800.jpg 800w" width="200" height="260">`,
  ),
  withPictures(
    "blurred stand-in by file name, real address in an attribute of the theme's own",
    `<img src="/assets/placeholder-blur.png" data-lazy-original="/i/camp.jpg" width="200" height="260">`,
    `<img src="/assets/placeholder-blur.png" data-lazy-original="/i/skirt.jpg" width="200" height="260">`,
  ),
  withPictures(
    "real picture only in noscript",
    `<img src="${PIXEL}" width="200" height="260"><noscript><img src="/i/camp.jpg?a=1&amp;b=2"></noscript>`,
    `<img src="${PIXEL}" width="200" height="260"><noscript><img src="/i/skirt.jpg"></noscript>`,
  ),
  withPictures(
    "srcset is a stand-in while src is real",
    `<img src="/i/camp.jpg" srcset="${PIXEL} 1w" width="200" height="260">`,
    `<img src="/i/skirt.jpg" srcset="${PIXEL} 1w" width="200" height="260">`,
  ),
  withPictures(
    "mangled srcset",
    `<img srcset="/i/camp-1.jpg 300w,,/i/camp-2.jpg 600w 2x, ," width="200" height="260">`,
    `<img srcset=" , /i/skirt.jpg" width="200" height="260">`,
  ),
  withPictures(
    "picture with sources",
    `<picture><source srcset="/i/camp.webp 1x" type="image/webp"><img src="/i/camp.jpg" width="200" height="260"></picture>`,
    `<picture><source srcset="/i/skirt.webp 1x" type="image/webp"><img src="/i/skirt.jpg" width="200" height="260"></picture>`,
  ),
  withPictures(
    "picture with a lazy source and an empty img",
    `<picture><source data-srcset="/i/camp.webp 400w"><img alt="" width="200" height="260"></picture>`,
    `<picture><source data-srcset="/i/skirt.webp 400w"><img alt="" width="200" height="260"></picture>`,
  ),
  withPictures(
    "drawn pictures",
    `<img src="/i/camp.svg" width="200" height="260">`,
    `<img src="/i/skirt.svg" width="200" height="260">`,
  ),
  withPictures(
    "a film with its first picture, alone or see-through over a picture",
    `<video poster="/i/camp.jpg" src="/i/walk.mp4" style="width:200px;height:260px"></video>`,
    `<img src="/i/skirt.jpg" width="200" height="260"><video src="/i/turn.mp4" style="width:200px;height:260px;opacity:0"></video>`,
  ),
  withPictures(
    "an icon file beside the picture",
    `<img src="/i/zoom.svg" width="24" height="24"><img src="/i/camp.jpg" width="200" height="260">`,
    `<img src="/i/zoom.svg" width="24" height="24"><img src="/i/skirt.jpg" width="200" height="260">`,
  ),
  {
    ...withPictures(
      "addresses relative to the page's base",
      `<img src="i/camp.jpg" width="200" height="260">`,
      `<img data-src="i/skirt.jpg" width="200" height="260">`,
    ),
    head: '<base href="http://shop.localhost/uk/">',
    products: expected("Camp shirt | 49 | GBP | /uk/i/camp.jpg", "Midi skirt | 69 | GBP | /uk/i/skirt.jpg"),
    // The library's document does not resolve `src` and `href` against a base.
    layout: true,
  },
  withPictures(
    "one picture that stands in for all, called like any other",
    `<img src="/cdn/s-empty.png" data-src="/i/camp.jpg" width="200" height="260">`,
    `<img src="/cdn/s-empty.png" data-src="/i/skirt.jpg" width="200" height="260">`,
  ),
];
