import { peopleShots } from "./people.ts";
import { type KindPicture, type Shot, shoot } from "./shot.ts";
import { thingShots } from "./things.ts";

/** How to take every picture of the set, by kind. */
export function kindShots(): Map<string, (() => Shot[])[]> {
  const kinds = new Map<string, (() => Shot[])[]>();
  for (const [kind, shots] of [...peopleShots(), ...thingShots()])
    kinds.set(kind, [...(kinds.get(kind) ?? []), shots]);
  return kinds;
}

/** The pictures of some kinds, or of all. Taken anew at each call; the same each time. */
export function kindPictures(only?: readonly string[]): Map<string, KindPicture[]> {
  const pictures = new Map<string, KindPicture[]>();
  for (const [kind, scenes] of kindShots()) {
    if (only && !only.includes(kind)) continue;
    const list: KindPicture[] = [];
    for (const shots of scenes)
      for (const shot of shots()) list.push(shoot(`${kind}-${list.length + 1}`, shot));
    pictures.set(kind, list);
  }
  return pictures;
}
