import type { BadgeModel } from "./badge-model.ts";
import chip from "./chip.css?inline";
import { makeCloth, namesOf } from "./cloth.ts";
import { hangerOf, type Place, placeOf } from "./hang.ts";
import { makeHost } from "./host.ts";
import { make, makeButton } from "./make.ts";

/** Distance of a badge from its picture's edges, in CSS pixels. Layout choice. */
export const BADGE_INSET = 6;

/** Narrower pictures, in CSS pixels, have room for the cloth and the number only. Layout choice. */
export const ROOM_FOR_WORDS = 112;

/** How often a badge is put back where the page's own rendering drops it; a framework that insists wins. */
export const MOST_ATTACHMENTS = 4;

/** A badge on one product. */
export interface Badge {
  /** The button that opens the card; a card is placed beside it. */
  readonly button: HTMLButtonElement;
  /** The picture it belongs to. */
  readonly picture: HTMLElement;
  show(model: BadgeModel): void;
  /** Hangs it where it belongs, at first or again; does nothing while it hangs. */
  hang(): void;
  /** Puts it where its picture is now. */
  place(place: Place): void;
  measure(): Place;
  /** Whether it hangs on the whole page for want of a positioned element. */
  adrift(): boolean;
  remove(): void;
}

/**
 * A badge for the product `root` on its `picture`, not hung yet. `open` is called when a person presses it, `gone` when
 * it is removed.
 */
export function makeBadge(picture: HTMLElement, root: Element, open: () => void, gone: () => void): Badge {
  const button = makeButton("chip", "", open);
  // Drawn before it has a place, it would count as something that jumped.
  button.hidden = true;
  const host = makeHost(button, chip);
  let hanger = hangerOf(picture, root);
  let attachments = 0;
  return {
    button,
    picture,
    adrift: () => !hanger,
    show({ state, words, count, cloth, title, note }) {
      button.dataset.state = state;
      // A number that the words hold already, or that is one, is shown only where there is no room for words.
      const said = count === 1 || words.includes(String(count));
      const number = count > 0 ? [make("span", said ? "count said" : "count", String(count))] : [];
      button.replaceChildren(makeCloth(cloth), make("span", "words", words), ...number);
      const names = namesOf(cloth);
      button.ariaLabel = [words, note, names, title].filter(Boolean).join(". ");
      button.title = note || names;
      button.ariaHasPopup = "dialog";
    },
    hang() {
      if (host.isConnected || attachments >= MOST_ATTACHMENTS) return;
      if (attachments) hanger = hangerOf(picture, root);
      attachments += 1;
      (hanger ?? document.documentElement).append(host);
    },
    measure: () => placeOf(picture, hanger),
    place({ left, bottom, width }) {
      const { style, classList } = button;
      button.hidden = width <= 0;
      classList.toggle("narrow", width < ROOM_FOR_WORDS);
      style.left = `${left + BADGE_INSET}px`;
      style.top = `${bottom - BADGE_INSET}px`;
      style.maxWidth = `${width - 2 * BADGE_INSET}px`;
    },
    remove() {
      host.remove();
      gone();
    },
  };
}
