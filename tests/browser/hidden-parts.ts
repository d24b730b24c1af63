import type { CDPSession, Page } from "playwright-core";
import { evaluateApart } from "./evaluate-apart.ts";

/** Longest wait for something to come to rest, in frames of the page; what never does is pressed where it is. */
const FRAMES_TO_REST = 120;

/** Resolves once the page has drawn, whatever it has made of its own clock. */
const NEXT_FRAME =
  "new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(() => drawn(true))))";

/** A part of the page inside a closed shadow root: only the browser's own protocol sees it, no page does. */
export interface HiddenNode {
  readonly backendNodeId: number;
  readonly tag: string;
  /** Attributes by name. */
  readonly attributes: Readonly<Record<string, string>>;
  /** All text below it, white space folded. */
  readonly text: string;
}

interface ProtocolNode {
  backendNodeId: number;
  nodeName: string;
  nodeValue: string;
  attributes?: string[];
  children?: ProtocolNode[];
  shadowRoots?: (ProtocolNode & { shadowRootType?: string })[];
}

function textOf(node: ProtocolNode): string {
  const own = node.nodeName === "#text" ? node.nodeValue : "";
  return [own, ...[...(node.children ?? []), ...(node.shadowRoots ?? [])].map(textOf)]
    .join(" ")
    .replace(/\s+/g, " ")
    .trim();
}

function attributesOf({ attributes = [] }: ProtocolNode): Record<string, string> {
  const pairs: Record<string, string> = {};
  for (let at = 0; at + 1 < attributes.length; at += 2)
    pairs[attributes[at] ?? ""] = attributes[at + 1] ?? "";
  return pairs;
}

/** The label of a button that says it deeper inside. */
function labelIn({ children = [], shadowRoots = [] }: ProtocolNode): Record<string, string> {
  const inside = [...children, ...shadowRoots];
  const [label] = inside.flatMap(
    (inner) => attributesOf(inner)["aria-label"] ?? labelIn(inner)["aria-label"] ?? [],
  );
  return label === undefined ? {} : { "aria-label": label };
}

function collect(node: ProtocolNode, hidden: boolean, found: HiddenNode[]): void {
  if (hidden && !node.nodeName.startsWith("#")) {
    const { backendNodeId, nodeName } = node;
    found.push({
      backendNodeId,
      tag: nodeName.toLowerCase(),
      attributes: { ...(nodeName === "BUTTON" && labelIn(node)), ...attributesOf(node) },
      text: textOf(node),
    });
  }
  for (const child of node.children ?? []) collect(child, hidden, found);
  for (const root of node.shadowRoots ?? []) collect(root, root.shadowRootType === "closed", found);
}

/** A look behind the closed shadow roots of one page. */
export interface HiddenParts {
  /** Every element in a closed shadow root, in document order. */
  all(): Promise<readonly HiddenNode[]>;
  /** The buttons among them. */
  buttons(): Promise<readonly HiddenNode[]>;
  /** Where it is drawn, CSS px of the viewport; null where it is not. */
  box(node: HiddenNode): Promise<{ x: number; y: number; width: number; height: number } | null>;
  /** What its computed style says of a property. */
  style(node: HiddenNode, property: string): Promise<string>;
  /** Scrolls there, waits until it rests and clicks its middle with a real mouse. */
  click(node: HiddenNode): Promise<void>;
}

/** Looks behind the closed shadow roots of a page, as only the browser can. */
export async function hiddenParts(page: Page): Promise<HiddenParts> {
  const session: CDPSession = await page.context().newCDPSession(page);
  const all = async () => {
    const { root } = (await session.send("DOM.getDocument", { depth: -1, pierce: true })) as {
      root: ProtocolNode;
    };
    const found: HiddenNode[] = [];
    collect(root, false, found);
    return found;
  };
  const box = async ({ backendNodeId }: HiddenNode) => {
    try {
      const { quads } = await session.send("DOM.getContentQuads", { backendNodeId });
      const [x0 = 0, y0 = 0, , , x1 = 0, y1 = 0] = quads[0] ?? [];
      return quads[0] ? { x: x0, y: y0, width: x1 - x0, height: y1 - y0 } : null;
    } catch {
      return null;
    }
  };
  const boxAtRest = async (node: HiddenNode) => {
    let place = await box(node);
    for (let frame = 0; frame < FRAMES_TO_REST; frame++) {
      await evaluateApart(page, NEXT_FRAME);
      const before = JSON.stringify(place);
      place = await box(node);
      if (JSON.stringify(place) === before) break;
    }
    return place;
  };
  return {
    all,
    buttons: async () => (await all()).filter(({ tag }) => tag === "button"),
    box,
    style: async ({ backendNodeId }, property) => {
      const { object } = await session.send("DOM.resolveNode", { backendNodeId });
      const { result } = await session.send("Runtime.callFunctionOn", {
        objectId: object.objectId ?? "",
        functionDeclaration: `function () { return getComputedStyle(this).${property}; }`,
      });
      return String(result.value);
    },
    click: async (node) => {
      await session.send("DOM.scrollIntoViewIfNeeded", { backendNodeId: node.backendNodeId });
      const place = await boxAtRest(node);
      if (!place) throw new Error(`"${node.text}" is not drawn.`);
      await page.mouse.click(place.x + place.width / 2, place.y + place.height / 2);
    },
  };
}
