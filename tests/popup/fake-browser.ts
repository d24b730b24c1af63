import type {
  AskWorker,
  ExplainedVerdict,
  WorkerRequestName,
  WorkerRequests,
} from "../../lib/link/messages.ts";
import type { Palette } from "../../lib/sample/palette.ts";
import type { PopupBrowser, ShownTab, StoreGrant, SummaryLine } from "../../lib/ui/popup/popup-browser.ts";
import { explainedAs } from "./page-of.ts";

/** What the imagined browser holds; a test sets it before the popup opens or while it is open. */
export interface Scene {
  tab: ShownTab | null;
  /** Result of the function run on the page; an Error is thrown. */
  counted: unknown;
  grant: StoreGrant | null;
  /** The person's answer to the browser's question. */
  answer: boolean;
  /** A page script runs in the tab. */
  scripted: boolean;
  closetSize: number;
  verdicts: Map<string, ExplainedVerdict>;
  /** What the page has to be read from a snapshot; an Error is thrown. */
  views: unknown;
  /** What the sampler makes of it. */
  sampled: Palette;
  /** Thrown by the named request. */
  refusals: Partial<Record<WorkerRequestName, string>>;
}

export interface FakeBrowser extends PopupBrowser {
  readonly scene: Scene;
  /** Everything the popup asked of the browser, in order. */
  readonly calls: [name: string, ...with_: unknown[]][];
  /** The page script sends a message. */
  send(message: unknown): void;
  /** The page script ends. */
  hangUp(): void;
  pageLoaded(): void;
  closetChanged(): void;
}

/** A store page with two other picture hosts, switched off, and a closet of three pieces. */
export function fakeBrowser(change: Partial<Scene> = {}): FakeBrowser {
  const scene: Scene = {
    tab: { id: 7, url: "https://shop.example:8443/skirts" },
    counted: [
      ["https://img.example", 2],
      ["https://cdn.example", 40],
      ["https://shop.example", 3],
    ],
    grant: null,
    answer: true,
    scripted: false,
    closetSize: 3,
    verdicts: new Map(),
    views: [],
    sampled: { swatches: [{ oklab: [0.5, 0.1, 0.1], share: 1 }], confidence: 0.9, evidence: ["pixels"] },
    refusals: {},
    ...change,
  };
  const calls: FakeBrowser["calls"] = [];
  let line: SummaryLine | null = null;
  let loaded = () => {};
  let changed = () => {};

  const answers: { [N in WorkerRequestName]?: (request: WorkerRequests[N]["request"]) => unknown } = {
    explain: ({ candidates }) =>
      candidates.map(({ key }) => scene.verdicts.get(key) ?? explainedAs(key, { kind: "nothing" })),
    saveWish: ({ candidate }) => ({ id: candidate.key }),
    dropWish: () => null,
    samplePicture: () => scene.sampled,
    switchOff: () => {
      scene.grant = null;
      scene.scripted = false;
      return null;
    },
  };
  const ask: AskWorker = async <N extends WorkerRequestName>(
    name: N,
    request: WorkerRequests[N]["request"],
  ) => {
    calls.push([name, request]);
    const refusal = scene.refusals[name];
    if (refusal !== undefined) throw new Error(refusal);
    return answers[name]?.(request) as WorkerRequests[N]["reply"];
  };

  return {
    scene,
    calls,
    send: (message) => line?.summary(message),
    hangUp: () => line?.closed(),
    pageLoaded: () => loaded(),
    closetChanged: () => changed(),
    shownTab: async () => scene.tab,
    onTabLoaded: (_tabId, listener) => {
      loaded = listener;
    },
    imageOrigins: async () => {
      if (scene.counted instanceof Error) throw scene.counted;
      return scene.counted;
    },
    storeGrant: async () => scene.grant,
    requestOrigins: async (origins) => {
      calls.push(["requestOrigins", origins]);
      return scene.answer;
    },
    intendStore: async (origin, imageOrigins) => void calls.push(["intendStore", origin, imageOrigins]),
    runOnce: async (tabId) => {
      calls.push(["runOnce", tabId]);
      scene.scripted = true;
    },
    reloadTab: async (tabId) => void calls.push(["reloadTab", tabId]),
    connect: (tabId, to) => {
      calls.push(["connect", tabId]);
      line = scene.scripted ? to : null;
      if (!scene.scripted) queueMicrotask(() => to.closed());
      return () => {
        line = null;
      };
    },
    holdStill: async (tabId) => {
      calls.push(["holdStill", tabId]);
      if (scene.views instanceof Error) throw scene.views;
      return { views: scene.views, say: (word) => void calls.push(["say", word]) };
    },
    snapshot: async () => {
      calls.push(["snapshot"]);
      return new Blob();
    },
    pixelsIn: async (_, parts) =>
      parts.map((_part, at) => ({ data: Uint8ClampedArray.of(at, at, at, 255), width: 1, height: 1 })),
    closetSize: async () => scene.closetSize,
    onClosetChange: (listener) => {
      changed = listener;
    },
    openCloset: () => void calls.push(["openCloset"]),
    ask,
  };
}
