/** Answers kept of one question; a page asks for most of them many times. */
const MOST_REMEMBERED = 256;

/** The same function of a text, which answers once for each: tiles repeat their wording. */
export function remembered<T>(answer: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const found = answer(text);
    if (known.size >= MOST_REMEMBERED) known.clear();
    known.set(text, found);
    return found;
  };
}
