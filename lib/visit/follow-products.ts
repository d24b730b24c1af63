import { badgeLayer } from "../badge/badge-layer.ts";
import type { Candidate } from "../fit/verdict.ts";
import type { AskWorker, VerdictBrief } from "../link/messages.ts";
import type { FoundProduct } from "../page/product.ts";
import type { PictureSource } from "../pixels/picture-reader.ts";
import type { Palette } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";
import { atMost } from "./at-most.ts";
import { badgeModelOf } from "./badge-model-of.ts";
import { batched } from "./batched.ts";
import type { OpenCard } from "./card-subject.ts";
import { memoryOf, saidPalette } from "./memory.ts";
import { settled } from "./settled.ts";
import { candidateOf, pictureOf, sourceOf, type Tracked } from "./tracked.ts";
import { mayGain, witnessesOf } from "./witnesses.ts";

/** Pictures read at the same time: more would only slow the page's own loading. */
const PICTURES_AT_ONCE = 4;

/** How near the screen a picture comes before it is read, in CSS pixels. */
const NEAR = "300px";

/** How long comparisons are gathered, in milliseconds; shorter than anyone can see. */
const GATHER = 20;

/** Reads the colours of a product worn in `slot` from one of its pictures. */
export type ReadPalette = (
  product: FoundProduct,
  slot: Slot | null,
  source: PictureSource,
) => Promise<Palette>;

export interface FollowDeps {
  readonly ask: AskWorker;
  readonly openCard: OpenCard;
  /** Something to show changed. */
  readonly changed: () => void;
  /** A product was compared for the first time. */
  readonly compared: () => void;
  readonly signal: AbortSignal;
}

/** The products of a page, each from its picture to its badge. */
export interface Follower {
  readonly products: () => readonly Tracked[];
  /** The products these pictures belong to. */
  readonly of: (pictures: readonly Element[]) => readonly Tracked[];
  /** Pictures are being read or compared. */
  readonly busy: () => boolean;
  /** Takes products on; those known by the same element are brought up to date. */
  readonly take: (products: readonly FoundProduct[]) => void;
  /** Lets go of what left the page, and hangs badges again that the page dropped. */
  readonly tidy: () => void;
  /** Compares everything again. */
  readonly compareAgain: () => void;
}

export function followProducts(deps: FollowDeps, readPalette: ReadPalette): Follower {
  const { ask, openCard, changed, compared, signal } = deps;
  const byRoot = new Map<Element, Tracked>();
  const byPicture = new Map<Element, Tracked>();
  const hang = badgeLayer(signal);
  const oneOfFew = atMost(PICTURES_AT_ONCE);
  const { recall, remember } = memoryOf(ask);
  const judge = batched<Candidate, VerdictBrief>((candidates) => ask("judge", { candidates }), GATHER);
  let busy = 0;

  const isCurrent = (tracked: Tracked, source: PictureSource) =>
    !signal.aborted && byRoot.get(tracked.product.root) === tracked && tracked.source === source;

  const show = (tracked: Tracked) => {
    tracked.badge?.show(badgeModelOf(tracked));
    changed();
  };

  const compare = async (tracked: Tracked) => {
    const { source, brief: before } = tracked;
    const brief = await judge(candidateOf(tracked)).catch((error) => silentBrief(tracked, error));
    if (!isCurrent(tracked, source)) return;
    tracked.brief = brief;
    if (!before) compared();
    show(tracked);
  };

  const read = async (tracked: Tracked) => {
    const { product, source } = tracked;
    const known = await recall(product, source.url);
    // An unsure answer, kept from where no other picture was, is no longer the best there is.
    const kept =
      known.palette && mayGain(known.palette) && witnessesOf(product).length ? null : known.palette;
    const palette =
      kept ??
      (await oneOfFew(async () =>
        isCurrent(tracked, source) ? readPalette(product, known.slot, source) : null,
      ));
    if (!palette || !isCurrent(tracked, source)) return;
    tracked.slot = known.slot;
    if (!kept) remember(source.url, palette);
    tracked.palette = palette;
    await compare(tracked);
  };

  const follow = async (tracked: Tracked) => {
    const { product, source } = tracked;
    busy += 1;
    try {
      tracked.badge ??= badgeOf(tracked);
      show(tracked);
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
    const badge = hang(picture, product.root, () => {
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

  const near = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        const tracked = byPicture.get(target);
        if (!isIntersecting || !tracked) continue;
        near.unobserve(target);
        void follow(tracked);
      }
    },
    { rootMargin: NEAR },
  );
  signal.addEventListener("abort", () => near.disconnect());

  const look = (tracked: Tracked, picture: Element) => {
    byPicture.set(picture, tracked);
    // Observing anew makes the observer tell where it is now.
    near.unobserve(picture);
    near.observe(picture);
  };

  const drop = (tracked: Tracked) => {
    const picture = pictureOf(tracked.product);
    byRoot.delete(tracked.product.root);
    if (picture) {
      near.unobserve(picture);
      byPicture.delete(picture);
    }
    tracked.badge?.remove();
  };

  const take = (product: FoundProduct) => {
    const source = sourceOf(product);
    const picture = pictureOf(product);
    const known = byRoot.get(product.root);
    if (!known || pictureOf(known.product) !== picture) {
      if (known) drop(known);
      const tracked: Tracked = { product, source, slot: null, palette: null, brief: null, badge: null };
      byRoot.set(product.root, tracked);
      if (picture) look(tracked, picture);
      return;
    }
    const same = known.product.key === product.key;
    known.product = product;
    if (same && known.source.url === source.url) return;
    known.source = source;
    if (!same) {
      // A tile used again for another product must not wear the old one's badge for a moment.
      known.slot = known.palette = known.brief = null;
      known.badge?.show(badgeModelOf(known));
    }
    if (picture) look(known, picture);
  };

  return {
    products: () => [...byRoot.values()],
    of: (pictures) => pictures.flatMap((picture) => byPicture.get(picture) ?? []),
    busy: () => busy > 0,
    take(products) {
      for (const product of products) take(product);
      changed();
    },
    tidy() {
      for (const tracked of byRoot.values()) {
        if (tracked.product.root.isConnected) tracked.badge?.hang();
        else drop(tracked);
      }
      changed();
    },
    compareAgain() {
      for (const tracked of byRoot.values()) if (tracked.palette) void compare(tracked);
    },
  };
}

/** What a badge says when no answer came. */
function silentBrief({ product }: Tracked, error: unknown): VerdictBrief {
  const why = error instanceof Error ? error.message : String(error);
  return { key: product.key, headline: why, kind: "unreadable", count: 0, names: [] };
}
