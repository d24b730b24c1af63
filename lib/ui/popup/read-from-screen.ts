import * as v from "valibot";
import { slotSchema } from "../../closet/schemas.ts";
import { type ScreenView, VIEWS_MOST } from "../../link/messages.ts";
import { seenOnScreen } from "../../sample/seen-on-screen.ts";
import type { PopupBrowser } from "./popup-browser.ts";

/** Characters of the page's own words about a product's colour, as many as the worker takes. */
const TEXT_LENGTH = 2_000;

const part = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const viewsSchema: v.GenericSchema<unknown, readonly ScreenView[]> = v.pipe(
  v.array(
    v.object({
      box: v.object({ left: part, top: part, right: part, bottom: part }),
      slot: v.nullable(slotSchema),
      text: v.pipe(v.string(), v.maxLength(TEXT_LENGTH)),
    }),
  ),
  v.maxLength(VIEWS_MOST),
);

/**
 * The last way to a picture's colours: has the page hold still, takes one snapshot of what the tab shows, and tells the page
 * what it shows of the pictures that could be read in no other way. Takes none where there is no such picture in plain sight.
 */
export async function readFromScreen(browser: PopupBrowser, tabId: number): Promise<void> {
  const { views, say } = await browser.holdStill(tabId);
  const read = v.safeParse(viewsSchema, views);
  // A page that holds still for nothing is let go at once.
  if (!read.success || !read.output.length) return say("taken");
  const sitting = read.output;
  const snapshot = await browser.snapshot().finally(() => say("taken"));
  const pixels = await browser.pixelsIn(
    snapshot,
    sitting.map(({ box }) => box),
  );
  const palettes = await Promise.all(
    pixels.map((picture, at) => {
      const { slot = null, text = "" } = sitting[at] ?? {};
      return browser.ask("samplePicture", { pixels: picture, others: [], slot, text });
    }),
  );
  say(palettes.map(seenOnScreen));
}
