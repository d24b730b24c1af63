import { parentOf, WHOLE } from "./ancestors.ts";
import type { Cluster } from "./clusters.ts";
import { letters } from "./letters.ts";
import type { Survey } from "./survey.ts";

/** How far above picture and price the title or link may hang. */
const STEPS_UP = 4;

/** The whole tile around a cluster: grown until it has a title and a link, never into a neighbour. */
export function tileRoot({ root: smallest, pictures, prices }: Cluster, survey: Survey): Element {
  const priced = prices.reduce((sum, price) => sum + letters(price.text), 0);
  let root = smallest;
  for (let step = 0; step < STEPS_UP; step++) {
    const up = parentOf(root);
    const linked = root.closest("a[href]") ?? root.querySelector("a[href]");
    if (!up || WHOLE.test(up.tagName)) break;
    if (linked && letters(root.textContent.slice(0, 2000)) > priced + 2) break;
    if (survey.pricesIn.get(up) !== survey.pricesIn.get(smallest)) break;
    if ((survey.picturesIn.get(up) ?? 0) > pictures.length) break;
    root = up;
  }
  return root;
}
