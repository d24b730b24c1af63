import type { AskWorker } from "../link/messages.ts";
import type { OpenCard } from "./card-subject.ts";

/** Makes the function that opens cards for one visit. */
type CardMaker = (ask: AskWorker, signal: AbortSignal) => OpenCard;

/** Where the card's script leaves its maker for the page script: the extension's own world, which no page reaches. */
const KEY = Symbol.for("hueward card");

const world = globalThis as typeof globalThis & { [KEY]?: CardMaker };

/** Called by the card's own script once it has arrived. */
export function offerCard(make: CardMaker): void {
  world[KEY] = make;
}

/**
 * Opens cards with the card's script, which comes at the first press: most pages are read without opening one, and
 * need not load it. What goes wrong is said on the badge that was pressed.
 */
export function cardOnDemand(ask: AskWorker, signal: AbortSignal): OpenCard {
  let open: OpenCard | null = null;
  return (subject) => {
    if (open) return open(subject);
    const bring = async () => {
      if (!world[KEY]) await ask("bringCard", null);
      if (signal.aborted || !world[KEY]) return;
      open ??= world[KEY](ask, signal);
      open(subject);
    };
    bring().catch((error) => {
      subject.button.textContent = error instanceof Error ? error.message : String(error);
    });
  };
}
