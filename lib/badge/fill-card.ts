import css from "./card.css?inline";
import type { CardActions, CardModel, CardPiece } from "./card-model.ts";
import { makeCloth, namesOf } from "./cloth.ts";
import { makeDial } from "./dial.ts";
import { make, makeButton } from "./make.ts";
import { makePicker } from "./picker.ts";
import { seal } from "./seal.ts";
import { unsearchable, unsearchableName } from "./unsearchable.ts";

/** Pieces listed before the rest are only counted. Layout choice: more would not be read. */
const MOST_PIECES = 6;

/** What the card around the content can do. */
export interface CardFrame {
  /** Says something without moving the focus. */
  readonly say: (words: string) => void;
  readonly close: () => void;
}

/** Fills a card; every press goes to `actions`, and what they reject with is said on the card. */
export function fillCard(body: HTMLElement, model: CardModel, actions: CardActions, frame: CardFrame): void {
  const attempt = async (act: () => Promise<void>, after?: () => void) => {
    try {
      await act();
      after?.();
    } catch (error) {
      frame.say(error instanceof Error ? error.message : String(error));
    }
  };
  const head = () => [makeButton("close", "Close", frame.close), make("p", "title", model.title)];

  const { owned } = model;
  let { wished } = model;
  const wish = makeButton("button", "", () => {
    void attempt(actions.toggleWish, () => {
      wished = !wished;
      label();
      frame.say(wished ? "Saved to your wishlist." : "Taken off your wishlist.");
    });
  });
  const keep = (slot: number | null) =>
    attempt(
      () => actions.own(slot),
      () => {
        fillCard(body, { ...model, wished, owned: true }, actions, frame);
        frame.say("Added to your closet.");
      },
    );
  const own = makeButton("button", "", () => {
    if (owned) return;
    if (!model.slots.length) void keep(null);
    else ask("Where is it worn?", ...makeSlots(model.slots, (slot) => void keep(slot)));
  });
  const label = () => {
    wish.replaceChildren(unsearchableName(wished ? "Take off wishlist" : "Save to wishlist"));
    own.replaceChildren(unsearchableName(owned ? "In your closet" : "I own this"));
    own.ariaDisabled = String(owned);
  };
  const ask = (question: string, ...answers: readonly HTMLElement[]) => {
    frame.say("");
    const heading = make("h2", "", question);
    heading.tabIndex = -1;
    const back = makeButton("button", "Back", () => fillCard(body, { ...model, wished }, actions, frame));
    body.replaceChildren(...head(), heading, ...answers, make("div", "row foot", back));
    heading.focus();
  };
  const wrong = makeButton("button", "Not this colour", () => {
    ask("Which colour is it?", ...makePicker(model, actions, (act) => void attempt(act)));
  });
  label();

  body.replaceChildren(
    ...head(),
    make("h2", "", unsearchableName(model.headline)),
    ...(model.cloth.length
      ? [makeCloth(model.cloth, "band"), make("p", "names", unsearchable(sharesOf(model)))]
      : []),
    ...model.cautions.map((caution) => make("p", "caution", unsearchable(caution))),
    ...listOf("Already in your closet, in this shade", model.duplicates),
    ...listOf("Goes with", model.pieces),
    ...(model.looks
      ? [make("h3", "", unsearchableName("Looks")), make("p", "", unsearchable(model.looks))]
      : []),
    make("div", "row foot", wish, own, wrong),
  );
}

function makeSlots(slots: readonly string[], choose: (index: number) => void): HTMLElement[] {
  const buttons = slots.map((slot, index) => makeButton("choice", slot, () => choose(index)));
  return [make("div", "choices", ...buttons)];
}

function sharesOf({ cloth, corrected }: CardModel): string {
  const names =
    cloth.length > 1
      ? cloth.map(({ name, share }) => `${name} ${Math.round(share * 100)} %`).join(", ")
      : namesOf(cloth);
  return corrected ? `${names}, as you said` : names;
}

function listOf(heading: string, pieces: readonly CardPiece[]): HTMLElement[] {
  if (!pieces.length) return [];
  const list = make("ul", "", ...pieces.slice(0, MOST_PIECES).map(itemOf));
  const rest = pieces.length - MOST_PIECES;
  if (rest > 0) list.append(make("li", "soft", unsearchable(`and ${rest} more`)));
  return [make("h3", "", unsearchableName(heading)), list];
}

function itemOf({ name, cloth, word, dial, why }: CardPiece): HTMLElement {
  return make(
    "li",
    "piece",
    seal(css, makeCloth(cloth)),
    make("span", "", unsearchable(name), make("span", "soft", unsearchable(namesOf(cloth)))),
    dial ? seal(css, makeDial(dial)) : "",
    make("div", "word", unsearchable(word), ...(why ? [whyOf(why, name)] : [])),
  );
}

function whyOf(why: string, name: string): HTMLElement {
  // A list of what can be pressed is heard without what stands around it.
  const opener = make("summary", "", unsearchableName("Why", `Why: ${name}`));
  return make("details", "soft", opener, unsearchable(why));
}
