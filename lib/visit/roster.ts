import { nearest } from "../page/dom/ancestors.ts";
import { pictureOf, type Tracked } from "./tracked.ts";

/** The products of a page, found again by their elements. */
export interface Roster {
  readonly all: () => readonly Tracked[];
  readonly has: (tracked: Tracked) => boolean;
  /** The product that an element is all of. */
  readonly withRoot: (root: Element) => Tracked | undefined;
  /** The products that these pictures show. */
  readonly withPictures: (pictures: readonly Element[]) => readonly Tracked[];
  /** The product that an element is inside of. */
  readonly around: (element: Element) => Tracked | undefined;
  /** Pictures that the page has taken away. */
  readonly lostPictures: () => readonly Element[];
  readonly add: (tracked: Tracked) => void;
  readonly delete: (tracked: Tracked) => void;
}

/** An empty roster. */
export function makeRoster(): Roster {
  const byRoot = new Map<Element, Tracked>();
  const byPicture = new Map<Element, Tracked>();
  return {
    all: () => [...byRoot.values()],
    has: (tracked) => byRoot.get(tracked.product.root) === tracked,
    withRoot: (root) => byRoot.get(root),
    withPictures: (pictures) => pictures.flatMap((picture) => byPicture.get(picture) ?? []),
    around(element) {
      const root = nearest(element, (up) => byRoot.has(up));
      return root ? byRoot.get(root) : undefined;
    },
    lostPictures: () => [...byPicture.keys()].filter((picture) => !picture.isConnected),
    add(tracked) {
      byRoot.set(tracked.product.root, tracked);
      const picture = pictureOf(tracked.product);
      if (picture) byPicture.set(picture, tracked);
    },
    delete({ product }) {
      byRoot.delete(product.root);
      const picture = pictureOf(product);
      if (picture) byPicture.delete(picture);
    },
  };
}
