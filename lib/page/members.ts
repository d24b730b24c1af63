import { countUp, parentOf } from "./dom/ancestors.ts";
import type { PriceLeaf } from "./money/written-price.ts";
import type { Survey } from "./survey.ts";

/** Members of a list from which on it says something of each. */
export const LEAST_MEMBERS = 3;
/** Elements around a member of a list, up to the list. */
const MOST_WRAPS = 4;

/** How many members of a list that are called alike show a picture, a price too, and only prices that fit. */
export interface Members {
  readonly pictured: number;
  readonly priced: number;
  readonly fitting: number;
}

/** What markup calls an element first. */
export const kindOf = ({ tagName, classList }: Element): string => `${tagName} ${classList[0] ?? ""}`;

/** Of what has a root those that few others are called like. */
export function unlikeOthers<T extends { readonly root: Element }>(all: readonly T[]): readonly T[] {
  const counts = new Map<string, number>();
  for (const { root } of all) counts.set(kindOf(root), (counts.get(kindOf(root)) ?? 0) + 1);
  return all.filter(({ root }) => (counts.get(kindOf(root)) ?? 0) < LEAST_MEMBERS);
}

function countMembers(list: Element, kind: string, { picturesIn, pricesIn }: Survey, fit: Counts): Members {
  const members = [...list.children].filter((one) => kindOf(one) === kind && picturesIn.has(one));
  const priced = members.filter((one) => pricesIn.has(one));
  const fitting = priced.filter((one) => pricesIn.get(one) === fit.get(one));
  return { pictured: members.length, priced: priced.length, fitting: fitting.length };
}

type Counts = ReadonlyMap<Element, number>;

/**
 * Tells of the list that an element is a member of, by itself or with what is around it; null where there is none. Each
 * list of a survey is counted once. `fits`: which prices count as fitting
 */
export function membersBy(fits: (price: PriceLeaf) => boolean) {
  const surveys = new WeakMap<
    Survey,
    { readonly fit: Counts; readonly lists: Map<Element, Map<string, Members>> }
  >();
  const surveyed = (survey: Survey) => {
    const fit = new Map<Element, number>();
    for (const price of survey.prices) if (fits(price)) countUp(fit, price.element);
    const counts = { fit, lists: new Map<Element, Map<string, Members>>() };
    surveys.set(survey, counts);
    return counts;
  };
  return (root: Element, survey: Survey): Members | null => {
    const { fit, lists } = surveys.get(survey) ?? surveyed(survey);
    let member = root;
    for (let wraps = 0; wraps < MOST_WRAPS; wraps++) {
      const list = parentOf(member);
      if (!list) return null;
      const kinds = lists.get(list) ?? new Map<string, Members>();
      lists.set(list, kinds);
      const kind = kindOf(member);
      const members = kinds.get(kind) ?? countMembers(list, kind, survey, fit);
      kinds.set(kind, members);
      if (members.pictured >= LEAST_MEMBERS) return members;
      member = list;
    }
    return null;
  };
}
