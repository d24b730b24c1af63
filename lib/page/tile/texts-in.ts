/** The texts of these elements, in their order. */
export function* textsIn(parts: readonly Element[]): Generator<Node, void, undefined> {
  for (const part of parts) {
    const walker = part.ownerDocument.createTreeWalker(part, 4);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) yield node;
  }
}
