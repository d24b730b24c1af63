import type { AskWorker, PartName } from "../link/messages.ts";
import type { Places } from "../page/places.ts";
import type { FoundPage } from "../page/product.ts";
import type { OpenCard } from "./card-subject.ts";
import type { FollowDeps, Follower } from "./follow-products.ts";

/** What the parts of the page script bring. Most pages of a store hold no product, and most badges are never opened. */
export interface Parts {
  /** Puts products together, reads pictures and hangs badges; comes with the first place that may show a product. */
  readonly show: {
    readonly readPlaces: (places: Places) => Generator<undefined, FoundPage, undefined>;
    readonly follow: (deps: FollowDeps) => Follower;
  };
  /** Shows cards; comes with the first press on a badge. */
  readonly card: (ask: AskWorker, signal: AbortSignal) => OpenCard;
}

/** Where parts leave themselves for the page script: the extension's own world, which no page reaches. */
const KEY = Symbol.for("hueward parts");

const world = globalThis as typeof globalThis & { [KEY]?: Partial<Parts> };

/** Called by a part's own script once it has arrived. */
export function offerPart<N extends PartName>(name: N, part: Parts[N]): void {
  world[KEY] = { ...world[KEY], [name]: part };
}

/** Parts on their way: who else needs one waits for the same. */
const coming = new Map<PartName, Promise<unknown>>();

async function askForPart(ask: AskWorker, name: PartName): Promise<void> {
  const way = coming.get(name) ?? ask("bringPart", { name });
  coming.set(name, way);
  try {
    await way;
  } finally {
    coming.delete(name);
  }
}

/** A part, brought by the worker unless it is here. @throws as `ask` does */
export async function bringPart<N extends PartName>(ask: AskWorker, name: N): Promise<Parts[N]> {
  if (!world[KEY]?.[name]) await askForPart(ask, name);
  const part = world[KEY]?.[name];
  if (!part) throw new Error("A part of Hueward did not arrive. Reload this page to go on.");
  return part;
}

/** Opens cards with the card's part; what goes wrong is said on the badge that was pressed. */
export function cardOnDemand(ask: AskWorker, signal: AbortSignal): OpenCard {
  let open: OpenCard | null = null;
  return async (subject) => {
    try {
      const make = await bringPart(ask, "card");
      if (signal.aborted) return;
      open ??= make(ask, signal);
      open(subject);
    } catch (error) {
      subject.fail(error instanceof Error ? error.message : String(error));
    }
  };
}
