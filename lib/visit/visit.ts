import type { AskWorker, PageSummary } from "../link/messages.ts";
import type { FoundPage, FoundProduct } from "../page/product.ts";
import type { OpenCard } from "./card-subject.ts";
import type { FollowDeps, Follower } from "./follow-products.ts";
import { inSlices, type Work } from "./in-slices.ts";
import { summarise } from "./summarise.ts";
import { watchPage } from "./watch-page.ts";

/** Least time between two summaries, in milliseconds: a popup cannot show more. */
const PUBLISH_EVERY = 200;

/** What a visit of a page needs of the outside. */
export interface VisitDeps {
  readonly ask: AskWorker;
  /** Sends the page at a glance, whenever it changed. */
  readonly publish: (summary: PageSummary) => void;
  readonly onClosetChange: (listener: () => void, signal: AbortSignal) => void;
  readonly openCard: OpenCard;
  /** Ends the visit; every trace leaves the page. */
  readonly signal: AbortSignal;
}

/** How products are found and followed. */
export interface VisitReaders {
  readonly readPage: (document: Document) => Work<FoundPage>;
  readonly readAdded: (document: Document, elements: readonly Element[]) => Work<readonly FoundProduct[]>;
  /** Begins to follow products; called with the first one. */
  readonly follow: (deps: FollowDeps) => Promise<Follower>;
}

/** Finds the products of a page, shows a badge on each and keeps up with the page until the signal aborts. */
export async function visit(deps: VisitDeps, readers: VisitReaders): Promise<void> {
  const { publish, onClosetChange, signal } = deps;
  const started = performance.now();
  const timings: { -readonly [T in keyof PageSummary["timings"]]: PageSummary["timings"][T] } = {
    found: null,
    firstBadge: null,
    lastBadge: null,
  };
  let kind: FoundPage["kind"] = "none";
  let finding = 0;
  /** The page as a whole is yet to be read, or once more: what reads or follows it did not come. */
  let missed = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const tell = () => {
    timer = undefined;
    const state = finding ? "finding" : follower?.busy() ? "reading" : "done";
    publish(summarise({ url: document.URL, kind, state, timings }, follower?.products() ?? []));
  };
  const changed = () => {
    if (!signal.aborted) timer ??= setTimeout(tell, PUBLISH_EVERY);
  };
  const compared = () => {
    timings.lastBadge = performance.now() - started;
    timings.firstBadge ??= timings.lastBadge;
  };
  let follower: Follower | null = null;
  let coming: Promise<Follower> | null = null;

  const find = async <T>(work: Work<T>, found: (result: T) => Promise<void>) => {
    finding += 1;
    changed();
    try {
      await found(await inSlices(work, signal));
    } finally {
      finding -= 1;
      changed();
    }
  };
  const take = async (products: readonly FoundProduct[]) => {
    if (!products.length) return;
    coming ??= readers.follow({ ...deps, changed, compared, repictured });
    try {
      follower = await coming;
    } catch (error) {
      coming = null;
      throw error;
    }
    signal.throwIfAborted();
    follower.take(products);
    for (const { root } of products) watchAround(root);
  };
  const findAll = async () => {
    missed = true;
    await find(readers.readPage(document), (page) => {
      ({ kind } = page);
      timings.found ??= performance.now() - started;
      return take(page.products);
    });
    missed = false;
  };
  const findIn = (elements: readonly Element[]) => find(readers.readAdded(document, elements), take);
  /** The visit may end in the middle of a search; that is no failure. */
  const quietly = (search: Promise<void>) =>
    search.catch((error) => {
      missed = true;
      if (!signal.aborted) throw error;
    });

  const repictured = (found: readonly FoundProduct[]) => {
    const main = found.some(({ role }) => role === "main");
    const search = main ? findAll() : findIn(found.map(({ root }) => root));
    // Where the search brought nothing new, the product is the same and only its picture is not.
    const unchanged = () => follower?.products().filter(({ product }) => found.includes(product)) ?? [];
    void quietly(search.then(() => take(unchanged().map(({ product }) => product))));
  };

  signal.addEventListener("abort", () => clearTimeout(timer));
  const watchAround = watchPage(
    document,
    {
      taken: () => follower?.taken() ?? false,
      added(elements) {
        follower?.tidy(elements);
        if (missed && !finding) void quietly(findAll());
        else if (elements.length) void quietly(findIn(elements));
      },
      moved: () => void quietly(findAll()),
    },
    signal,
  );
  onClosetChange(() => follower?.compareAgain(), signal);
  // What changed while the page lay in the browser's memory of pages gone by, nobody told it.
  addEventListener("pageshow", ({ persisted }) => persisted && follower?.compareAgain(), { signal });
  await quietly(findAll());
}
