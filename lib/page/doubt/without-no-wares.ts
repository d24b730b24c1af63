import { parentOf } from "../dom/ancestors.ts";
import { kindOf, LEAST_MEMBERS } from "../members.ts";
import type { FoundProduct } from "../product.ts";

/** Elements around a member of a list, up to the list. */
const MOST_WRAPS = 4;

/** Members of the lists in one element, by what markup calls them: wares, and what is none. */
type Lists = Map<Element, Map<string, { wares: number; others: number }>>;

function* listsAround(root: Element): Generator<readonly [list: Element, kind: string], void, undefined> {
  let member = root;
  for (let wraps = 0; wraps < MOST_WRAPS; wraps++) {
    const list = parentOf(member);
    if (!list) return;
    yield [list, kindOf(member)];
    member = list;
  }
}

function count(lists: Lists, root: Element, isWare: boolean): void {
  for (const [list, kind] of listsAround(root)) {
    const kinds = lists.get(list) ?? new Map<string, { wares: number; others: number }>();
    const members = kinds.get(kind) ?? { wares: 0, others: 0 };
    if (isWare) members.wares++;
    else members.others++;
    lists.set(list, kinds.set(kind, members));
  }
}

/** Products without those in a list most of which offers times, places, work or gifts (`others`), as far as no data describes them. */
export function withoutNoWares(
  products: readonly FoundProduct[],
  others: readonly Element[],
): readonly FoundProduct[] {
  if (others.length === 0) return products;
  const lists: Lists = new Map();
  for (const { root } of products) count(lists, root, true);
  for (const root of others) count(lists, root, false);
  return products.filter(({ root, evidence }) => {
    if (evidence.includes("structured")) return true;
    for (const [list, kind] of listsAround(root)) {
      const members = lists.get(list)?.get(kind);
      if (members && members.wares + members.others >= LEAST_MEMBERS) return members.wares > members.others;
    }
    return true;
  });
}
