import { RELATIONS, type Relation } from "./relation-name.ts";

/*
 * A list of names as one whole number, so that a tight loop allocates nothing: four bits a name, the first in the lowest, each 1 more than
 * its place in RELATIONS; 0 ends the list. Five names, the most that a pair can have, take 20 bits.
 */
const BITS = 4;
const NAME = 2 ** BITS - 1;

/** The empty list. */
export const NO_NAMES = 0;

/** The list of one name. */
export function codeOf(relation: Relation): number {
  return RELATIONS.indexOf(relation) + 1;
}

/** A list of one name and then those of another list. */
export function before(one: number, names: number): number {
  return one | (names << BITS);
}

/** A list of names and then one more. */
export function followedBy(names: number, one: number): number {
  let shift = 0;
  while (names >>> shift !== 0) shift += BITS;
  return names | (one << shift);
}

/** The list of the first name alone. */
export function firstOf(names: number): number {
  return names & NAME;
}

/** The list without its first name. */
export function othersOf(names: number): number {
  return names >>> BITS;
}

/** The first name of a list; "none" for the empty one. */
export function relationIn(names: number): Relation {
  return RELATIONS[firstOf(names) - 1] ?? "none";
}

const lists = new Map<number, readonly Relation[]>();

/** All names of a list. All pairs with the same names share one array. */
export function relationsIn(names: number): readonly Relation[] {
  const known = lists.get(names);
  if (known) return known;
  const relations: Relation[] = [];
  for (let rest = names; rest !== NO_NAMES; rest = othersOf(rest)) relations.push(relationIn(rest));
  lists.set(names, relations);
  return relations;
}
