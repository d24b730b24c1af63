import type { Badge } from "../badge/badge.ts";
import { badgeLayer } from "../badge/badge-layer.ts";
import type { AskWorker } from "../link/messages.ts";
import type { Swatch } from "../sample/palette.ts";
import { badgeModelOf } from "./badge-model-of.ts";
import { cardSubjectOf, type OpenCard } from "./card-subject.ts";
import { type Comparing, comparing, type ReadPalette } from "./comparing.ts";
import { saidPalette } from "./memory.ts";
import { pictureOf, type Tracked } from "./tracked.ts";

export interface BadgingDeps {
  readonly ask: AskWorker;
  readonly openCard: OpenCard;
  /** Something to show changed. */
  readonly changed: () => void;
  /** A product was compared for the first time. */
  readonly compared: () => void;
  readonly signal: AbortSignal;
}

/** Brings products from a picture to a badge with its verdict. */
export interface Badging {
  /** Gives a product its badge, reads its picture and compares it. */
  readonly follow: (tracked: Tracked) => Promise<void>;
  /** Shows on its badge what is known of it. */
  readonly show: (tracked: Tracked) => void;
  readonly learn: Comparing["learn"];
  readonly compare: Comparing["compare"];
  /** Pictures are being read or compared. */
  readonly busy: () => boolean;
  /** Hangs badges again that the page dropped. */
  readonly rehang: (some: Iterable<Tracked>) => void;
  /** Puts badges clear of what came on to their pictures. */
  readonly refit: (some: Iterable<Tracked>) => void;
}

/** @param isHere whether a product is still on the page: else an answer comes too late */
export function badging(
  { ask, openCard, changed, compared, signal }: BadgingDeps,
  readPalette: ReadPalette,
  isHere: (tracked: Tracked) => boolean,
): Badging {
  const layer = badgeLayer(signal);
  let busy = 0;

  const badgeOf = (tracked: Tracked) => {
    const picture = pictureOf(tracked.product);
    if (!picture) return null;
    const badge = layer.hang(picture, tracked.product.root, () =>
      openCard(cardSubjectOf(tracked, badge, (swatches) => correct(tracked, swatches))),
    );
    return badge;
  };

  const show = (tracked: Tracked) => {
    tracked.badge ??= badgeOf(tracked);
    tracked.badge?.show(badgeModelOf(tracked));
    changed();
  };

  const { read, learn, compare } = comparing({
    ask,
    readPalette,
    isCurrent: (tracked, source) => !signal.aborted && isHere(tracked) && tracked.source === source,
    compared(tracked, first) {
      if (first) compared();
      show(tracked);
    },
  });

  const follow = async (tracked: Tracked) => {
    busy += 1;
    try {
      show(tracked);
      await read(tracked);
    } finally {
      busy -= 1;
      changed();
    }
  };

  const correct = async (tracked: Tracked, swatches: readonly Swatch[]) => {
    await ask("correct", { productKey: tracked.product.key, swatches });
    // A new source makes every answer to the old one stale.
    tracked.source = { ...tracked.source };
    tracked.palette = swatches.length ? saidPalette(swatches) : null;
    await (swatches.length ? compare(tracked) : follow(tracked));
  };

  return {
    follow,
    show,
    learn,
    compare,
    busy: () => busy > 0,
    rehang: (some) => layer.rehang(badgesOf(some)),
    refit: (some) => layer.refit(badgesOf(some)),
  };
}

function badgesOf(some: Iterable<Tracked>): Badge[] {
  return [...some].flatMap(({ badge }) => badge ?? []);
}
