/** Where our elements are noted: the extension's own world, which no page reaches and all parts of the page script share. */
const KEY = Symbol.for("hueward hosts");

const world = globalThis as typeof globalThis & { [KEY]?: WeakSet<Node> };

world[KEY] ??= new WeakSet();

/** The elements of ours on the page; by their tag nobody can tell them. */
export const ourHosts: WeakSet<Node> = world[KEY];
