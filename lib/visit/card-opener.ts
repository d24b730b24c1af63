import { makeCard } from "../badge/card.ts";
import type { CardActions } from "../badge/card-model.ts";
import { oklabFromRgb8 } from "../color/convert.ts";
import type { Oklab } from "../color/oklab.ts";
import type { AskWorker, KeepRequest } from "../link/messages.ts";
import { asCanvas } from "../pixels/canvas-of.ts";
import { type PictureSource, pictureReader } from "../pixels/picture-reader.ts";
import { thumbnailOfImage } from "../pixels/thumbnail-of.ts";
import { SLOTS } from "../words/slot.ts";
import { cardModelOf } from "./card-model-of.ts";
import type { CardSubject, OpenCard } from "./card-subject.ts";
import { choicesOf } from "./choices.ts";
import { clothAt } from "./cloth-at.ts";

/** The function that opens the page's one card on a product and does what a person presses there. */
export function cardOpener(ask: AskWorker, signal: AbortSignal): OpenCard {
  const card = makeCard(signal);
  const read = pictureReader(signal);

  return (subject) => {
    const { button } = subject;
    let wished = false;

    const refresh = async () => {
      const candidate = subject.candidate();
      const [explained] = await ask("explain", { candidates: [candidate] });
      if (!explained) throw new Error("Hueward did not answer. Try again in a moment.");
      ({ wished } = explained);
      const choices = choicesOf(candidate.palette, explained.names);
      /** What the card says, and what is pressed on it, is of one product; the page may show another one there by now. */
      const same = () => {
        if (subject.product().key !== candidate.key)
          throw new Error(
            "The page shows another product here now. Close this card and press the badge again.",
          );
        return subject;
      };
      const say = async (oklab: Oklab | undefined) => {
        await same().correct(oklab ? [{ oklab, share: 1 }] : []);
        await refresh();
      };
      const actions: CardActions = {
        async toggleWish() {
          if (wished) await ask("dropWish", { id: candidate.key });
          else await ask("saveWish", await keepRequest(same()));
          wished = !wished;
        },
        async own(slot) {
          await ask("ownPiece", await keepRequest(same(), slot === null ? undefined : SLOTS[slot]));
        },
        picture: async () => read(same().source(), asCanvas),
        colorAt: (canvas, x, y) => `rgb(${clothAt(canvas, x, y).join(" ")})`,
        pickPlace: (canvas, x, y) => say(oklabFromRgb8(...clothAt(canvas, x, y))),
        pickChoice: (index) => say(choices[index]?.oklab),
        unpick: () => say(undefined),
      };
      card.show(button, cardModelOf(candidate, explained, choices), actions);
    };

    card.open(button, subject.product().title);
    refresh().catch((error) => card.fail(button, error instanceof Error ? error.message : String(error)));
  };
}

async function keepRequest(subject: CardSubject, slot = subject.candidate().slot): Promise<KeepRequest> {
  const { price, link } = subject.product();
  return {
    candidate: { ...subject.candidate(), slot },
    price,
    link,
    pageUrl: location.href,
    picture: await thumbnailFrom(subject.source()),
  };
}

/** A thumbnail where the page may read the picture, else its address for the worker to fetch. */
async function thumbnailFrom({ url, image }: PictureSource): Promise<string | null> {
  const address = /^https?:/.test(url) ? url : null;
  return image ? thumbnailOfImage(image).catch(() => address) : address;
}
