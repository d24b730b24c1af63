/** A picture narrower or lower than this is an icon, in CSS pixels; a tile's picture on a phone is about 150, a line's in a table 47. */
export const SMALLEST_PICTURE = 46;
/** A picture without a link, a button or a product's name around it is at least this wide, in CSS pixels. */
export const SMALLEST_BARE = 100;
/** A browser draws a picture that did not come as a square of this side where nothing gives it a size, in CSS pixels. */
export const BROKEN = 16;
/** Most pictures that a product page is about are as wide as this; then a smaller one that lies nearer to the name is a seal or a note. CSS pixels, layout choice. */
export const LARGE_MAIN = 220;
