import * as v from "valibot";
import type { PageSummary, SummaryProduct } from "../../link/messages.ts";
import { originOf } from "../../link/origin-of.ts";
import { IMAGE_ORIGINS_MAX } from "../../worker/stores.ts";
import { createExplainer } from "./create-explainer.ts";
import { pageSummarySchema } from "./page-summary-schema.ts";
import { pickImageOrigins } from "./pick-image-origins.ts";
import type { PopupBrowser } from "./popup-browser.ts";
import { NOTHING_KNOWN, type PopupFacts } from "./popup-state.ts";
import { isUnread, rankProducts } from "./rank-products.ts";
import { readFromScreen } from "./read-from-screen.ts";
import { sentenceOf } from "./sentence-of.ts";

/** What a person can do in the popup. None rejects: what goes wrong becomes `problem`. */
export interface PopupActions {
  /** Asks for the store and its image hosts; must be called from within a click. */
  switchOn(imageOrigins: readonly string[]): Promise<void>;
  /** Ends reading here: gives a store's grant back, or ends a single reading. */
  switchOff(): Promise<void>;
  readPage(): Promise<void>;
  reloadPage(): Promise<void>;
  /** Begins anew, after something went wrong. */
  lookAgain(): Promise<void>;
  toggleWish(product: SummaryProduct, wished: boolean): Promise<void>;
  openCloset(): void;
}

/**
 * Follows one tab for as long as the popup is open.
 * @param show told all that is known, each time that changes
 * @param signal ends everything
 */
export function openSession(
  browser: PopupBrowser,
  show: (facts: PopupFacts) => void,
  signal: AbortSignal,
): PopupActions {
  let facts = NOTHING_KNOWN;
  let hangUp = () => {};
  let lookup = 0;
  let looked = false;
  const tell = (change: Partial<PopupFacts>) => {
    if (signal.aborted) return;
    facts = { ...facts, ...change };
    show(facts);
  };
  const fail = (problem: string) => tell({ problem });
  const explainer = createExplainer(browser.ask, (explained) => tell({ explained }), fail);

  function receive(summary: PageSummary) {
    tell({ summary, script: "running" });
    explainer.want(rankProducts(summary.products));
    if (looked || summary.state !== "done" || !summary.products.some(isUnread)) return;
    // Once: the person pressed the button once.
    looked = true;
    // Pictures that cannot be read from the screen either stay unread, each with its reason.
    if (facts.tab) readFromScreen(browser, facts.tab.id).catch(() => undefined);
  }

  function connect(tabId: number, whenAbsent: () => void) {
    hangUp();
    let heard = false;
    hangUp = browser.connect(tabId, {
      summary(message) {
        const parsed = v.safeParse(pageSummarySchema, message);
        if (!parsed.success)
          return fail("This page sent something that Hueward could not make out. Reload the page.");
        heard = true;
        receive(parsed.output);
      },
      closed() {
        if (heard) tell({ script: "lost" });
        else whenAbsent();
      },
    });
  }

  async function readPage() {
    if (!facts.tab) return;
    const { id } = facts.tab;
    tell({ script: "calling", summary: null, problem: null });
    try {
      await browser.runOnce(id);
      connect(id, () => tell({ script: "lost" }));
    } catch (error) {
      tell({ script: facts.grant ? "lost" : "absent", problem: sentenceOf(error) });
    }
  }

  /** Learns what the tab shows; a later call overtakes an earlier one. */
  async function lookAtTab() {
    const mine = ++lookup;
    try {
      const tab = await browser.shownTab();
      const origin = tab?.url ? originOf(tab.url) : null;
      if (!tab || !origin) return tell({ tab, origin: null });
      const [grant, counted] = await Promise.all([
        browser.storeGrant(origin),
        browser.imageOrigins(tab.id).catch(() => null),
      ]);
      if (mine !== lookup || signal.aborted) return;
      const imageOrigins = pickImageOrigins(counted, origin);
      tell({ tab, origin, grant, imageOrigins, refused: counted === null, script: "calling", summary: null });
      if (counted === null) return;
      connect(tab.id, () => (grant ? void readPage() : tell({ script: "absent" })));
    } catch (error) {
      tell({ tab: null, problem: sentenceOf(error) });
    }
  }

  async function start() {
    await lookAtTab();
    if (facts.tab) browser.onTabLoaded(facts.tab.id, () => void lookAtTab(), signal);
  }

  const countPieces = () =>
    browser.closetSize().then(
      (closetSize) => tell({ closetSize }),
      (error: unknown) => fail(sentenceOf(error)),
    );
  browser.onClosetChange(() => {
    void countPieces();
    explainer.renew();
  }, signal);
  signal.addEventListener("abort", () => hangUp());
  void countPieces();
  void start();

  return {
    async switchOn(imageOrigins) {
      const { origin, tab, grant } = facts;
      if (!origin || !tab) return;
      const named = imageOrigins.slice(0, IMAGE_ORIGINS_MAX);
      const answer = browser.requestOrigins([origin, ...named]);
      const noted = browser.intendStore(origin, named);
      try {
        const [granted] = await Promise.all([answer, noted]);
        if (!granted) return fail("The browser did not grant it, so nothing was switched on.");
        tell({ grant: { imageOrigins: named }, problem: null });
        if (grant) await browser.reloadTab(tab.id);
        else if (facts.script !== "running") await readPage();
      } catch (error) {
        fail(sentenceOf(error));
      }
    },
    async switchOff() {
      if (!facts.origin) return;
      try {
        hangUp();
        await browser.ask("switchOff", { origin: facts.origin });
        tell({ grant: null, script: "absent", summary: null, problem: null });
      } catch (error) {
        tell({ script: "lost", problem: sentenceOf(error) });
      }
    },
    readPage,
    async reloadPage() {
      if (facts.tab) await browser.reloadTab(facts.tab.id).catch((error: unknown) => fail(sentenceOf(error)));
    },
    async lookAgain() {
      tell({ problem: null });
      await Promise.all([countPieces(), lookAtTab()]);
    },
    async toggleWish({ candidate, price, link, image }, wished) {
      const pageUrl = facts.summary?.url;
      if (!pageUrl) return;
      try {
        if (wished) await browser.ask("saveWish", { candidate, price, link, pageUrl, picture: image });
        else await browser.ask("dropWish", { id: candidate.key });
        explainer.markWished(candidate.key, wished);
      } catch (error) {
        fail(sentenceOf(error));
      }
    },
    openCloset: () => browser.openCloset(),
  };
}
