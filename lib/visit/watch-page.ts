import { HOST_TAG } from "../badge/host.ts";

/** How long a page's changes are gathered before we look, in milliseconds: one burst, and a picture's address, settle within. */
const SETTLE = 120;

/** What changes on a page are told to. */
export interface PageChanges {
  /** Elements that were added and are still there, none inside another; none where something was only taken away. */
  readonly added: (elements: readonly Element[]) => void;
  /** Watched pictures that were given another address. */
  readonly repictured: (pictures: readonly Element[]) => void;
  /** The address changed without a new document. */
  readonly moved: () => void;
}

/** Watches one more picture for another address. */
export type WatchPicture = (picture: Element) => void;

/**
 * Tells what a page changes, bursts together, until `signal` aborts. Looks at added nodes and known pictures only,
 * never at the whole document, and not at our own elements.
 */
export function watchPage(document: Document, changes: PageChanges, signal: AbortSignal): WatchPicture {
  const added = new Set<Element>();
  const repictured = new Set<Element>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let address = document.URL;

  const tell = () => {
    timer = undefined;
    const elements = outermost(added);
    const pictures = connected(repictured);
    added.clear();
    repictured.clear();
    const moved = document.URL !== address;
    address = document.URL;
    if (pictures.length) changes.repictured(pictures);
    changes.added(elements);
    if (moved) changes.moved();
  };
  const soon = () => {
    timer ??= setTimeout(tell, SETTLE);
  };
  const nodes = new MutationObserver((records) => {
    for (const { addedNodes, removedNodes } of records) {
      for (const node of addedNodes) {
        if (node instanceof Element && node.localName !== HOST_TAG) added.add(node);
      }
      if (removedNodes.length) soon();
    }
    if (added.size) soon();
  });
  const pictures = new MutationObserver((records) => {
    for (const { target } of records) if (target instanceof Element) repictured.add(target);
    soon();
  });
  nodes.observe(document, { childList: true, subtree: true });
  signal.addEventListener("abort", () => {
    nodes.disconnect();
    pictures.disconnect();
    clearTimeout(timer);
  });
  return (picture) => pictures.observe(picture, { attributes: true, attributeFilter: ["src", "srcset"] });
}

function connected(elements: ReadonlySet<Element>): Element[] {
  return [...elements].filter((element) => element.isConnected);
}

function outermost(elements: ReadonlySet<Element>): Element[] {
  return connected(elements).filter((element) => {
    for (let outer = element.parentElement; outer; outer = outer.parentElement) {
      if (elements.has(outer)) return false;
    }
    return true;
  });
}
