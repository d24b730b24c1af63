import { ourHosts } from "../badge/our-hosts.ts";
import { parentOf } from "../page/dom/ancestors.ts";

/** How long a page's changes are gathered before we look, in milliseconds: one burst, and a picture's address, settle within. */
export const SETTLE = 120;

/** The same for changes after a longer rest, in milliseconds: what comes first is to be seen soon, what follows is gathered. */
const FIRST = 30;

/** What changes on a page are told to. */
export interface PageChanges {
  /** Elements were taken away just now, before the browser draws; true where others are likely to take their place. */
  readonly taken: () => boolean;
  /** Elements that were added and are still there, none inside another; none where something was only taken away. */
  readonly added: (elements: readonly Element[]) => void;
  /** The address changed without a new document, or nobody knows what else did. */
  readonly moved: () => void;
}

/** Watches the shadow trees that an element is in, too. */
export type WatchAround = (element: Element) => void;

/**
 * Tells what a page changes, bursts together, until `signal` aborts. Looks at added nodes only, never at the whole
 * document, and not at our own elements; not at all while the page is hidden.
 */
export function watchPage(document: Document, changes: PageChanges, signal: AbortSignal): WatchAround {
  const added = new Set<Element>();
  const watched = new WeakSet<Node>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let address = document.URL;
  let told = -SETTLE;

  /** Something changed while nobody saw the page; what it was is found out when somebody does. */
  let late = false;

  const tell = () => {
    timer = undefined;
    if (document.hidden) {
      late = true;
      added.clear();
      document.addEventListener("visibilitychange", tell, { once: true, signal });
      return;
    }
    told = performance.now();
    const elements = outermost(added);
    added.clear();
    const moved = late || document.URL !== address;
    late = false;
    address = document.URL;
    changes.added(elements);
    if (moved) changes.moved();
  };
  const observer = new MutationObserver((records) => {
    for (const { addedNodes } of records)
      for (const element of elementsOf(addedNodes)) if (!ourHosts.has(element)) added.add(element);
    // A clock that counts down changes text alone.
    const taken = records.some(({ removedNodes }) => elementsOf(removedNodes).length > 0);
    const rested = performance.now() - told > SETTLE;
    // What a page draws anew is to have its badges back before anyone misses them.
    if (taken && changes.taken() && added.size && rested) {
      clearTimeout(timer);
      timer = setTimeout(tell);
    }
    if (taken || added.size) timer ??= setTimeout(tell, rested ? FIRST : SETTLE);
  });
  const watch = (tree: Node) => {
    if (watched.has(tree)) return;
    watched.add(tree);
    observer.observe(tree, { childList: true, subtree: true });
  };
  watch(document);
  signal.addEventListener("abort", () => {
    observer.disconnect();
    clearTimeout(timer);
  });
  return (element) => {
    for (let tree = element.getRootNode(); tree instanceof ShadowRoot; tree = tree.host.getRootNode())
      watch(tree);
  };
}

function elementsOf(nodes: NodeList): Element[] {
  return [...nodes].filter((node) => node instanceof Element);
}

function outermost(elements: ReadonlySet<Element>): Element[] {
  return [...elements].filter((element) => {
    for (let outer = parentOf(element); outer; outer = parentOf(outer)) {
      if (elements.has(outer)) return false;
    }
    return element.isConnected;
  });
}
