/** Smaller pictures, as a share of the screen's height, are left as they are: rows of tiles keep their badges in line. Layout choice. */
const LARGE = 0.5;

/** Where less of it shows, as a share of it or of a screenful, a badge would cover the most of what is seen. Layout choice. */
const LEAST_SHOWN = 1 / 3;

/**
 * How much of a picture, in CSS pixels from its top edge, a badge may lie on so as to be seen before anybody scrolls:
 * of a large one that the first screen cuts off, the part above; of any other, its height.
 * @param top the picture's distance from the top of its page; CSS pixels, as all lengths here
 */
export function shownAtFirst(top: number, height: number, screen: number): number {
  const above = screen - top;
  const isCut = top >= 0 && above >= LEAST_SHOWN * Math.min(height, screen) && above < height;
  return isCut && height > LARGE * screen ? above : height;
}

/**
 * Tells `shownAtFirst` of a picture on the page by its height. It is looked up when that is another than before, and never
 * because of a scroll or of a window that changes alone, so that a badge stays where a person has seen it.
 */
export function firstScreenOf(picture: Element): (height: number) => number {
  let known = 0;
  let shown = 0;
  return (height) => {
    if (height !== known) {
      known = height;
      shown = shownAtFirst(picture.getBoundingClientRect().top + scrollY, height, innerHeight);
    }
    return shown;
  };
}
