import type { Badge } from "../badge/badge.ts";
import { badgeLayer } from "../badge/badge-layer.ts";
import type { AskWorker } from "../link/messages.ts";
import { nearest } from "../page/ancestors.ts";
import type { FoundProduct } from "../page/product.ts";
import type { PictureSource } from "../pixels/picture-reader.ts";
import { badgeModelOf } from "./badge-model-of.ts";
import type { OpenCard } from "./card-subject.ts";
import { comparing, type ReadPalette } from "./comparing.ts";
import { latelyShown } from "./lately.ts";
import { saidPalette } from "./memory.ts";
import { nearScreen } from "./near-screen.ts";
import { settled } from "./settled.ts";
import { candidateOf, isLinked, pictureOf, sourceOf, type Tracked } from "./tracked.ts";
import { watchPictures } from "./watch-pictures.ts";

/** The picture of a product that is not known yet. */
const NO_SOURCE: PictureSource = { url: "", image: null };

export interface FollowDeps {
  readonly ask: AskWorker;
  readonly openCard: OpenCard;
  /** Something to show changed. */
  readonly changed: () => void;
  /** Products whose pictures the page changed; they are to be found again. */
  readonly repictured: (products: readonly FoundProduct[]) => void;
  /** A product was compared for the first time. */
  readonly compared: () => void;
  readonly signal: AbortSignal;
}

/** The products of a page, each from its picture to its badge. */
export interface Follower {
  readonly products: () => readonly Tracked[];
  /** Pictures are being read or compared. */
  readonly busy: () => boolean;
  /** Hears at once what the page took away; true where pictures of products are among it. */
  readonly taken: (elements: readonly Element[]) => boolean;
  /** Takes products on; those known by the same element are brought up to date. */
  readonly take: (products: readonly FoundProduct[]) => void;
  /** Lets go of what left the page, hangs badges again that the page dropped, and makes room for what it added to products. */
  readonly tidy: (added: readonly Element[]) => void;
  /** Compares everything again. */
  readonly compareAgain: () => void;
}

export function followProducts(deps: FollowDeps, readPalette: ReadPalette): Follower {
  const { ask, openCard, changed, compared, signal } = deps;
  const byRoot = new Map<Element, Tracked>();
  const byPicture = new Map<Element, Tracked>();
  const lately = latelyShown();
  const badges = badgeLayer(signal);
  let busy = 0;

  const isCurrent = (tracked: Tracked, source: PictureSource) =>
    !signal.aborted && byRoot.get(tracked.product.root) === tracked && tracked.source === source;

  const show = (tracked: Tracked) => {
    tracked.badge?.show(badgeModelOf(tracked));
    changed();
  };

  const showBadge = (tracked: Tracked) => {
    tracked.badge ??= badgeOf(tracked);
    show(tracked);
  };

  const { read, compare } = comparing({
    ask,
    readPalette,
    isCurrent,
    compared(tracked, first) {
      if (first) compared();
      show(tracked);
    },
  });

  const follow = async (tracked: Tracked) => {
    const { product, source } = tracked;
    busy += 1;
    try {
      showBadge(tracked);
      await settled(product);
      if (isCurrent(tracked, source)) {
        // Which of several files the page shows is known only now.
        tracked.source = sourceOf(product);
        await read(tracked);
      }
    } finally {
      busy -= 1;
      changed();
    }
  };

  const badgeOf = (tracked: Tracked) => {
    const { product } = tracked;
    const picture = pictureOf(product);
    if (!picture) return null;
    const badge = badges.hang(picture, product.root, () => {
      openCard({
        button: badge.button,
        product: () => tracked.product,
        source: () => tracked.source,
        candidate: () => candidateOf(tracked),
        correct: async (swatches) => {
          await ask("correct", { productKey: tracked.product.key, swatches });
          // A new source makes every answer to the old one stale.
          tracked.source = { ...tracked.source };
          tracked.palette = swatches.length ? saidPalette(swatches) : null;
          await (swatches.length ? compare(tracked) : follow(tracked));
        },
      });
    });
    return badge;
  };

  const near = nearScreen((picture) => {
    const tracked = byPicture.get(picture);
    if (tracked) void follow(tracked);
  }, signal);

  const look = (tracked: Tracked, picture: Element) => {
    byPicture.set(picture, tracked);
    watchPicture(picture);
    near.await(picture);
  };

  /** Knows nothing of it any more: a badge must not say of one product what is true of another. */
  const forget = (tracked: Tracked) => {
    tracked.slot = tracked.palette = tracked.brief = null;
    tracked.badge?.show(badgeModelOf(tracked));
  };

  const drop = (tracked: Tracked) => {
    lately.keep(tracked);
    const picture = pictureOf(tracked.product);
    byRoot.delete(tracked.product.root);
    if (picture) {
      near.forget(picture);
      byPicture.delete(picture);
    }
    tracked.badge?.remove();
  };

  const trackedBy = (pictures: readonly Element[]) =>
    pictures.flatMap((picture) => byPicture.get(picture) ?? []);

  /** Takes back at once what is said of tiles that show another product now. */
  const doubt = (pictures: readonly Element[]) => {
    for (const tracked of trackedBy(pictures)) {
      const { product, linked } = tracked;
      if (!linked || !product.root.isConnected || isLinked(product)) continue;
      forget(tracked);
      tracked.source = NO_SOURCE;
    }
  };

  const watchPicture = watchPictures(
    {
      touched: doubt,
      repictured(pictures) {
        const products = trackedBy(pictures).map(({ product }) => product);
        if (products.length) deps.repictured(products);
      },
      loaded(pictures) {
        // It came only after we had given it up.
        for (const tracked of trackedBy(pictures)) {
          const picture = pictureOf(tracked.product);
          if (picture && tracked.palette?.swatches.length === 0) look(tracked, picture);
        }
      },
    },
    signal,
  );

  const take = (product: FoundProduct) => {
    const source = sourceOf(product);
    const picture = pictureOf(product);
    const known = byRoot.get(product.root);
    const linked = isLinked(product);
    if (!known || pictureOf(known.product) !== picture) {
      if (known) drop(known);
      const nothing = { slot: null, palette: null, brief: null };
      const said = lately.take(product.key, source.url);
      const tracked: Tracked = { product, badge: null, linked, ...(said ?? nothing), source };
      byRoot.set(product.root, tracked);
      if (picture) look(tracked, picture);
      if (said) showBadge(tracked);
      return;
    }
    const same = known.product.key === product.key;
    Object.assign(known, { product, linked });
    if (same && known.source.url === source.url) return;
    known.source = source;
    if (!same) forget(known);
    if (picture) look(known, picture);
  };

  /** The product that an element is inside of. */
  const around = (element: Element) => {
    const root = nearest(element, (up) => byRoot.has(up));
    return root && byRoot.get(root);
  };

  return {
    products: () => [...byRoot.values()],
    busy: () => busy > 0,
    taken(elements) {
      const all = elements.flatMap((element) => [element, ...element.querySelectorAll("*")]);
      const pictures = all.filter((element) => byPicture.has(element));
      doubt(pictures);
      return pictures.length > 0;
    },
    take(products) {
      for (const product of products) take(product);
      changed();
    },
    tidy(added) {
      for (const tracked of byRoot.values()) if (!tracked.product.root.isConnected) drop(tracked);
      badges.rehang(shown(byRoot.values()));
      badges.refit(shown(new Set(added.flatMap((element) => around(element) ?? []))));
      changed();
    },
    compareAgain() {
      lately.clear();
      for (const tracked of byRoot.values()) if (tracked.palette) void compare(tracked);
    },
  };
}

function shown(some: Iterable<Tracked>): Badge[] {
  return [...some].flatMap(({ badge }) => badge ?? []);
}
