import { render } from "preact";
import { Popup } from "../../lib/ui/popup/popup.tsx";
import { type FakeBrowser, fakeBrowser, type Scene } from "./fake-browser.ts";
import { inventedPage } from "./invented-page.ts";
import { summary } from "./page-of.ts";

const { products, verdicts } = inventedPage(48);
const ON: Partial<Scene> = {
  scripted: true,
  grant: { imageOrigins: ["https://cdn.example", "https://img.example"] },
  verdicts,
};

/** Every screen of the popup: what the browser holds, and what the page script sends. */
const SCREENS: Readonly<
  Record<string, readonly [scene: Partial<Scene>, play: (browser: FakeBrowser) => void]>
> = {
  ready: [{}, () => {}],
  "ready-many-hosts": [
    {
      closetSize: 0,
      counted: Array.from({ length: 9 }, (_, at) => [`https://pictures-${at}.storefront.example`, 20 - at]),
    },
    () => {},
  ],
  reading: [
    ON,
    ({ send }) =>
      send(
        summary(
          products.map((one, at) => (at < 17 ? one : { ...one, brief: null })),
          "reading",
        ),
      ),
  ],
  results: [ON, ({ send }) => send(summary(products))],
  once: [{ scripted: true, verdicts }, ({ send }) => send(summary(products.slice(0, 3)))],
  "closet-empty": [
    { ...ON, closetSize: 0, verdicts: new Map() },
    ({ send }) =>
      send(
        summary(
          products.slice(0, 6).map((one) => ({
            ...one,
            brief: one.brief && {
              ...one.brief,
              kind: "empty-closet",
              headline: "Your closet is empty",
              count: 0,
            },
          })),
        ),
      ),
  ],
  "nothing-found": [ON, ({ send }) => send(summary([]))],
  "not-a-web-page": [{ tab: { id: 1, url: "about:blank" } }, () => {}],
  lost: [
    ON,
    ({ send, hangUp }) => {
      send(summary(products));
      hangUp();
    },
  ],
  error: [
    { ...ON, refusals: { explain: "Hueward did not answer. Try again in a moment." } },
    ({ send }) => send(summary(products.slice(0, 5))),
  ],
};

export const screens: readonly string[] = Object.keys(SCREENS);

/** Shows one screen in the document. */
export async function show(name: string): Promise<void> {
  const [scene, play] = SCREENS[name] ?? [{}, () => {}];
  const place = document.querySelector("#popup");
  if (!place) throw new Error("The page has no place for the popup.");
  const browser = fakeBrowser(scene);
  render(null, place);
  scrollTo(0, 0);
  render(<Popup browser={browser} />, place);
  await arrive();
  play(browser);
  await arrive();
}

const arrive = () => new Promise((done) => setTimeout(done, 100));
