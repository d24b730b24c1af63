import { render } from "preact";
import { act } from "preact/test-utils";
import { Popup } from "../../lib/ui/popup/popup.tsx";
import { type FakeBrowser, fakeBrowser, type Scene } from "./fake-browser.ts";
import { explainedAs, fitOf, product, summary } from "./page-of.ts";

/** Lets every promise that is on its way arrive, and the screen follow. */
export const settle = () => act(() => new Promise<void>((done) => setTimeout(done)));

/** The popup as a test sees and presses it. */
export interface OpenPopup {
  readonly browser: FakeBrowser;
  readonly place: HTMLElement;
  /** All that is written, white space folded. */
  text(): string;
  heading(): string | null | undefined;
  /** Titles of the listed products, in order. */
  titles(): (string | null)[];
  /** The first control whose text holds the label; throws where there is none. */
  button(label: string): HTMLElement;
  press(label: string): Promise<void>;
  /** The page script sends a message. */
  send(message: unknown): Promise<void>;
  /** What was asked of the browser by this name. */
  named(name: string): readonly unknown[];
  close(): void;
}

/** Opens the popup in the document on an imagined browser. */
export async function openPopup(scene: Partial<Scene> = {}): Promise<OpenPopup> {
  const browser = fakeBrowser(scene);
  const place = document.createElement("div");
  document.body.append(place);
  await act(() => render(<Popup browser={browser} />, place));
  await settle();
  const text = () => place.textContent?.replace(/\s+/g, " ") ?? "";
  const button = (label: string) => {
    const controls = [...place.querySelectorAll<HTMLElement>("button, summary, .filter")];
    const found = controls.find((one) => one.textContent?.includes(label));
    if (!found) throw new Error(`No button "${label}" in: ${text()}`);
    return found;
  };
  return {
    browser,
    place,
    text,
    heading: () => place.querySelector("h1")?.textContent,
    titles: () => [...place.querySelectorAll(".row-open")].map((title) => title.textContent),
    button,
    press: async (label) => {
      await act(() => button(label).click());
      await settle();
    },
    send: async (message) => {
      await act(() => browser.send(message));
      await settle();
    },
    named: (name) => browser.calls.filter(([called]) => called === name),
    close: () => {
      render(null, place);
      place.remove();
    },
  };
}

/** Three products: one that finishes looks, one owned already, one that goes. */
export const PAGE = [
  product("Red skirt", { headline: "Finishes 2 looks", kind: "looks", count: 2 }),
  product("Old coat", { headline: "You own this red", kind: "duplicate" }),
  product("Grey scarf", { headline: "Goes with 1 of yours", kind: "goes" }),
];
const VERDICTS = new Map([
  [
    "Red skirt",
    explainedAs("Red skirt", {
      kind: "looks",
      looks: 2,
      pieces: [
        fitOf("blazer", "complementary", ["split-complementary"], true),
        fitOf("shirt", "with-neutral"),
      ],
      lookExamples: [{ pieceIds: ["blazer", "shirt"], scheme: "complementary", whole: true, why: "" }],
      caution: "The picture is dim, so the red may be brighter.",
    }),
  ],
  [
    "Old coat",
    explainedAs("Old coat", { duplicates: [{ pieceId: "blazer", deltaE2000: 2, samePiece: false }] }),
  ],
]);

/** The popup on a page that was read: those three products. */
export async function openOnPage(scene: Partial<Scene> = {}): Promise<OpenPopup> {
  const popup = await openPopup({ scripted: true, verdicts: VERDICTS, ...scene });
  await popup.send(summary(PAGE));
  return popup;
}
