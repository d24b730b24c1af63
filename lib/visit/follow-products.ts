import type { FoundProduct } from "../page/product.ts";
import { spared } from "../page/spared.ts";
import type { PictureSource } from "../pixels/picture-reader.ts";
import { badgeModelOf } from "./badge-model-of.ts";
import { type BadgingDeps, badging } from "./badging.ts";
import type { Comparing, ReadPalette } from "./comparing.ts";
import { latelyShown } from "./lately.ts";
import { nearScreen } from "./near-screen.ts";
import { makeRoster } from "./roster.ts";
import { isLinked, pictureOf, sourceOf, type Tracked } from "./tracked.ts";
import { watchPictures } from "./watch-pictures.ts";

/** The picture of a tile of which nobody knows what it shows now. */
const NO_SOURCE: PictureSource = { url: "", image: null };

export interface FollowDeps extends BadgingDeps {
  /** Products whose pictures the page changed; they are to be found again. */
  readonly repictured: (products: readonly FoundProduct[]) => void;
}

/** The products of a page, each from its picture to its badge. */
export interface Follower {
  readonly products: () => readonly Tracked[];
  /** Pictures are being read or compared. */
  readonly busy: () => boolean;
  /** Hears at once that the page took something away; true where pictures of products are gone. */
  readonly taken: () => boolean;
  /** Takes products on; those known by the same element are brought up to date. */
  readonly take: (products: readonly FoundProduct[]) => void;
  /** Lets go of what left the page, hangs badges again that the page dropped, and makes room for what it added to products. */
  readonly tidy: (added: readonly Element[]) => void;
  readonly learn: Comparing["learn"];
  /** Compares everything again. */
  readonly compareAgain: () => void;
}

/** Follows the products it is given, as long as they are on the page and `deps.signal` does not abort. */
export function followProducts(deps: FollowDeps, readPalette: ReadPalette): Follower {
  const { changed, signal } = deps;
  const roster = makeRoster();
  const lately = latelyShown();
  const badges = badging(deps, readPalette, roster.has);

  const near = nearScreen((picture) => {
    for (const tracked of roster.withPictures([picture])) void badges.follow(tracked);
  }, signal);

  const look = ({ product }: Tracked) => {
    const picture = pictureOf(product);
    if (!picture) return;
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
    roster.delete(tracked);
    const picture = pictureOf(tracked.product);
    if (picture) near.forget(picture);
    tracked.badge?.remove();
  };

  /** Takes back at once what is said of tiles that show another product now. */
  const doubt = (pictures: readonly Element[]) => {
    for (const tracked of roster.withPictures(pictures)) {
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
        const products = roster.withPictures(pictures).map(({ product }) => product);
        if (products.length) deps.repictured(products);
      },
      loaded(pictures) {
        // It came only after we had given it up.
        for (const tracked of roster.withPictures(pictures))
          if (tracked.palette?.swatches.length === 0) look(tracked);
      },
    },
    signal,
  );

  const begin = (product: FoundProduct) => {
    const source = sourceOf(product);
    const nothing = { slot: null, palette: null, brief: null };
    const said = lately.take(product.key, source.url);
    const linked = isLinked(product);
    const tracked: Tracked = { product, badge: null, linked, ...(said ?? nothing), source };
    roster.add(tracked);
    look(tracked);
    if (said) badges.show(tracked);
  };

  const update = (known: Tracked, product: FoundProduct) => {
    const same = known.product.key === product.key;
    const source = sourceOf(product);
    Object.assign(known, { product, linked: isLinked(product) });
    if (same && known.source.url === source.url) return;
    known.source = source;
    if (!same) forget(known);
    look(known);
  };

  const take = (product: FoundProduct) => {
    const picture = pictureOf(product);
    const known = roster.withRoot(product.root);
    if (known && pictureOf(known.product) === picture) return update(known, product);
    // A picture that stands for another product now bears no second badge.
    const others = picture ? roster.withPictures([picture]) : [];
    for (const gone of [known, ...others]) if (gone) drop(gone);
    begin(product);
  };

  return {
    products: roster.all,
    busy: badges.busy,
    taken() {
      const pictures = roster.lostPictures();
      doubt(pictures);
      return pictures.length > 0;
    },
    take(products) {
      for (const product of products) spared(() => take(product));
      changed();
    },
    tidy(added) {
      for (const tracked of roster.all()) if (!tracked.product.root.isConnected) drop(tracked);
      badges.rehang(roster.all());
      badges.refit(new Set(added.flatMap((element) => roster.around(element) ?? [])));
      changed();
    },
    learn: badges.learn,
    compareAgain() {
      lately.clear();
      for (const tracked of roster.all()) if (tracked.palette) void badges.compare(tracked);
    },
  };
}
