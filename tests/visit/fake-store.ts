import { vi } from "vitest";
import type { Candidate } from "../../lib/fit/verdict.ts";
import type { AskWorker, PageSummary, WorkerRequests } from "../../lib/link/messages.ts";
import type { FoundPage, FoundProduct } from "../../lib/page/product.ts";
import type { Palette } from "../../lib/sample/palette.ts";
import type { CardSubject } from "../../lib/visit/card-subject.ts";
import type { ReadPalette } from "../../lib/visit/comparing.ts";
import { type FollowDeps, followProducts } from "../../lib/visit/follow-products.ts";

export const RED: Palette = {
  swatches: [{ oklab: [0.5, 0.17, 0.08], share: 1 }],
  confidence: 0.9,
  evidence: ["pixels"],
};

/** A tile of an invented store; its picture's width is what the browser would have found. */
export function tile(name: string, width = 300): HTMLElement {
  const root = document.createElement("article");
  const link = document.createElement("a");
  link.href = `http://shop.localhost/p/${name}`;
  const image = document.createElement("img");
  image.src = `http://shop.localhost/i/${name}.jpg`;
  Object.defineProperty(image, "complete", { value: true });
  Object.defineProperty(image, "naturalWidth", { value: width });
  link.append(image, name);
  root.append(link);
  return root;
}

/** Reads the tiles that `tile` makes. */
function productOf(root: Element): FoundProduct {
  const link = root.querySelector("a");
  const image = root.querySelector("img");
  return {
    role: "tile",
    key: link?.href ?? "",
    title: link?.textContent ?? "",
    price: { amount: 20, currency: "EUR" },
    link: link?.href ?? null,
    images: [image?.getAttribute("src") ?? ""],
    told: { category: "", color: "" },
    subject: "",
    language: "en",
    image,
    root,
    parts: [root],
    evidence: ["layout"],
  };
}

function* readPage(document: Document): Generator<undefined, FoundPage, undefined> {
  yield;
  const products = [...document.querySelectorAll("article")].map(productOf);
  return { kind: products.length ? "listing" : "none", products };
}

function* readAdded(
  _: Document,
  elements: readonly Element[],
): Generator<undefined, readonly FoundProduct[], undefined> {
  yield;
  const roots = elements.flatMap((element) =>
    element.matches("article") ? [element] : [...element.querySelectorAll("article")],
  );
  return roots.map(productOf);
}

/** Says of each picture whether it is near the screen; all are unless `far` says otherwise. */
function fakeIntersections(far: ReadonlySet<Element>) {
  const observers = new Set<{ tell: () => void }>();
  class FakeObserver {
    readonly #targets = new Set<Element>();
    readonly #listener: IntersectionObserverCallback;
    constructor(listener: IntersectionObserverCallback) {
      this.#listener = listener;
      observers.add(this);
    }
    observe(target: Element) {
      this.#targets.add(target);
      queueMicrotask(() => this.tell());
    }
    unobserve(target: Element) {
      this.#targets.delete(target);
    }
    disconnect() {
      this.#targets.clear();
      observers.delete(this);
    }
    tell() {
      const near = [...this.#targets].filter((target) => !far.has(target));
      const entries = near.map((target) => ({
        target,
        isIntersecting: true,
        intersectionRatio: 1,
        boundingClientRect: new DOMRect(),
      }));
      if (entries.length)
        this.#listener(
          entries as unknown as IntersectionObserverEntry[],
          this as unknown as IntersectionObserver,
        );
    }
  }
  vi.stubGlobal("IntersectionObserver", FakeObserver);
  vi.stubGlobal(
    "ResizeObserver",
    class {
      observe() {}
      unobserve() {}
      disconnect() {}
    },
  );
  return () => {
    for (const observer of observers) observer.tell();
  };
}

type Requests = { [N in keyof WorkerRequests]?: (request: WorkerRequests[N]["request"]) => unknown };

/** A store page with a worker that answers, both invented. `answers` replaces single answers. */
export function fakeStore(tiles: readonly HTMLElement[], answers: Requests = {}) {
  document.body.replaceChildren(...tiles);
  // Nothing is laid out here, so nothing lies anywhere.
  Object.assign(document, { elementFromPoint: () => null, elementsFromPoint: () => [] });
  const far = new Set<Element>();
  const shadows: ShadowRoot[] = [];
  const attach = Element.prototype.attachShadow;
  vi.spyOn(Element.prototype, "attachShadow").mockImplementation(function (this: Element, init) {
    const shadow = attach.call(this, init);
    shadows.push(shadow);
    return shadow;
  });
  const asked: { name: string; request: unknown }[] = [];
  const worker: Requests = {
    recall: ({ products }) => ({
      slots: Object.fromEntries(products.map(({ key }) => [key, "top"])),
      corrections: {},
      palettes: {},
    }),
    remember: () => null,
    correct: () => null,
    judge: ({ candidates }) => candidates.map(briefOf),
    ...answers,
  };
  const ask = (async (name: keyof Requests, request: never) => {
    asked.push({ name, request });
    const answer = worker[name] as ((request: unknown) => unknown) | undefined;
    if (!answer) throw new Error(`Nobody answers ${name}.`);
    return answer(request);
  }) as AskWorker;
  const ended = new AbortController();
  const summaries: PageSummary[] = [];
  const subjects: CardSubject[] = [];
  let tellClosetChange = () => {};
  const readPageSpy = vi.fn(readPage);
  const readAddedSpy = vi.fn(readAdded);
  const readPalette = vi.fn<ReadPalette>(async () => RED);
  const follow = async (deps: FollowDeps) => followProducts(deps, readPalette);
  return {
    deps: {
      ask,
      publish: (summary: PageSummary) => summaries.push(summary),
      onClosetChange: (listener: () => void) => {
        tellClosetChange = listener;
      },
      openCard: (subject: CardSubject) => subjects.push(subject),
      signal: ended.signal,
    },
    readers: { readPage: readPageSpy, readAdded: readAddedSpy, readPalette, follow },
    ended,
    summaries,
    subjects,
    far,
    comeNear: fakeIntersections(far),
    changeCloset: () => tellClosetChange(),
    /** Requests of a kind, in order. */
    requests: <N extends keyof WorkerRequests>(name: N) =>
      asked
        .filter((call) => call.name === name)
        .map(({ request }) => request as WorkerRequests[N]["request"]),
    asked,
    /** Hosts of ours that hang in the page now. */
    hosts: () =>
      shadows.map(({ host }) => host).filter((host) => host.isConnected && host.getRootNode() === document),
    /** What the badges in the page now show, sealed off inside their buttons. */
    faces: () =>
      shadows
        .filter(({ host }) => host.isConnected)
        .flatMap((shadow) => [...shadow.querySelectorAll<HTMLElement>(".shown")]),
    /** The buttons of the badges in the page now. */
    buttons: () =>
      shadows
        .filter(({ host }) => host.isConnected)
        .flatMap((shadow) => [...shadow.querySelectorAll("button")]),
  };
}

function briefOf({ key, title, palette }: Candidate) {
  return palette.swatches.length
    ? { key, headline: `Verdict on ${title}`, kind: "goes", count: 3, names: ["crimson"] }
    : { key, headline: "Can't read this picture", kind: "unreadable", count: 0, names: [] };
}
