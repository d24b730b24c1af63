/** The texts of these elements and of open shadow roots in them, in their order. */
export function* textsIn(parts: readonly (Element | ShadowRoot)[]): Generator<Node, void, undefined> {
  for (const part of parts) {
    const walker = part.ownerDocument.createTreeWalker(part, 5);
    for (let node: Node | null = part; node; node = walker.nextNode()) {
      if (node.nodeType === 3) yield node;
      else if ("shadowRoot" in node && node.shadowRoot) yield* textsIn([node.shadowRoot as ShadowRoot]);
    }
  }
}
