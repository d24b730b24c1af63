/** Bounds on hostile pages: elements and texts looked at in one product, and shadow roots inside each other. */
const MOST_NODES = 2000;
const MOST_DEPTH = 4;

/** The texts of these elements and of open shadow roots in them, in their order. */
export function textsIn(parts: readonly (Element | ShadowRoot)[], depth = 0): readonly Node[] {
  const texts: Node[] = [];
  let seen = 0;
  for (const part of parts) {
    const walker = part.ownerDocument.createTreeWalker(part, 5);
    for (let node: Node | null = part; node && seen < MOST_NODES; node = walker.nextNode()) {
      seen++;
      if (node.nodeType === 3) texts.push(node);
      else if (depth < MOST_DEPTH && "shadowRoot" in node && node.shadowRoot)
        texts.push(...textsIn([node.shadowRoot as ShadowRoot], depth + 1));
    }
  }
  return texts;
}
