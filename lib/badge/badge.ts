import type { BadgeModel } from "./badge-model.ts";
import chip from "./chip.css?inline";
import { makeCloth, namesOf } from "./cloth.ts";
import { firstScreenOf } from "./first-screen.ts";
import { freePlace, type Spot } from "./free-place.ts";
import { type Place, placeOf } from "./hang.ts";
import type { Seen } from "./hang-unnoticed.ts";
import { makeHost } from "./host.ts";
import { make, makeButton } from "./make.ts";
import { makePerch, type Perch } from "./perch.ts";
import { seal } from "./seal.ts";
import { takenSpots } from "./taken-spots.ts";

/** Distance of a badge from its picture's edges, in CSS pixels. Layout choice. */
export const BADGE_INSET = 6;

/** A point this far from the edges of its place is inside even the smallest badge, in CSS pixels. */
const INSIDE = BADGE_INSET + 12;

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
  /** Whether it is to be hung, at first or again; not while it hangs, nor once the page has dropped it too often. */
  loose(): boolean;
  readonly perch: Perch;
  /** Looks around before it is hung; counts as one attempt. */
  ready(): Seen;
  /** What of the product itself lies over it; null: nothing; undefined while nobody can tell. */
  cover(): Element | null | undefined;
  /** What the product shows on its picture may be another now; looks for it when it is measured next. */
  resurvey(): void;
  /** Where it would be now: on its picture, and clear of what was there when it was surveyed. */
  measure(): Place;
  place(place: Place): void;
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
  const face = make("span", "shown");
  // By its label it is known to those who do not see; its parts are inert.
  face.role = "img";
  button.append(seal(chip, face));
  const host = makeHost(button, chip);
  const perch = makePerch(host, button, picture, root);
  let attachments = 0;
  let taken: readonly Spot[] | null = null;
  const shownAtFirst = firstScreenOf(picture);
  return {
    button,
    picture,
    perch,
    show({ state, words, count, cloth, title, note }) {
      button.dataset.state = face.dataset.state = state;
      // A number that the words hold already, or that is one, is shown only where there is no room for words.
      const said = count === 1 || words.includes(String(count));
      const number = count > 0 ? [make("span", said ? "count said" : "count", String(count))] : [];
      const shown = [makeCloth(cloth), make("span", "words", words), ...number];
      // A page's `find()` and a selection it moves go through closed shadows, past what is inert; the label speaks for it.
      for (const part of shown) part.inert = true;
      face.replaceChildren(...shown);
      const names = namesOf(cloth);
      face.ariaLabel = [words, note, names, title].filter(Boolean).join(". ");
      button.title = note || names;
      button.ariaHasPopup = "dialog";
    },
    loose: () => !host.isConnected && attachments < MOST_ATTACHMENTS,
    ready() {
      attachments += 1;
      return { perch, look: perch.look() };
    },
    cover() {
      if (button.hidden) return undefined;
      const { left, top, width, height } = button.getBoundingClientRect();
      return perch.cover(left + width / 2, top + height / 2);
    },
    resurvey() {
      taken = null;
    },
    measure() {
      taken ??= takenSpots(picture, root);
      const hanger = perch.hanger();
      const place = placeOf(picture, hanger, perch.adrift());
      const height = picture.offsetHeight;
      const free = freePlace(
        { width: place.width, height, shown: shownAtFirst(height) },
        taken,
        ROOM_FOR_WORDS,
      );
      const left = place.left + free.left;
      const bottom = place.bottom - height + free.bottom;
      const buried = !hanger && perch.buried(left + INSIDE - scrollX, bottom - INSIDE - scrollY);
      return { left, bottom, width: buried ? 0 : free.width };
    },
    place({ left, bottom, width }) {
      const { style } = button;
      button.hidden = width <= 0;
      for (const { classList } of [button, face]) classList.toggle("narrow", width < ROOM_FOR_WORDS);
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
