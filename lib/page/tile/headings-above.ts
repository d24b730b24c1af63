import { isPlain, parentOf, WHOLE, within } from "../dom/ancestors.ts";
import { headingText } from "../dom/plain-text.ts";

/** Levels above a list within which its heading stands, and elements before it at each. */
const LEVELS = 4;
const MOST_BEFORE = 4;

const HEADING = "h1,h2,h3,h4,h5,h6";

/** What the headings say that stand right before a list, in lower case; none where another list stands between. */
export function headingsAbove(list: Element): readonly string[] {
  let up: Element | null = list;
  for (let level = 0; up && level < LEVELS && !WHOLE.test(up.tagName); level++, up = parentOf(up)) {
    let before = up.previousElementSibling;
    for (let step = 0; before && step < MOST_BEFORE; step++, before = before.previousElementSibling) {
      if (!isPlain(before)) continue;
      const headings = within(before, HEADING);
      if (headings.length > 0) return headings.map((heading) => headingText(heading).toLowerCase());
      if (before.querySelector("img")) return [];
    }
  }
  return [];
}
