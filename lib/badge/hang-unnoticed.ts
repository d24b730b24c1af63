import type { Perch } from "./perch.ts";

/** A perch and what a person saw of its product before anything was hung there. */
export interface Seen {
  readonly perch: Perch;
  readonly look: string;
}

/** A perch that is about to rise. */
export interface Rising extends Seen {
  readonly rise: () => void;
}

/**
 * Hangs hosts where the page's layout does not notice: each goes one place further out for as long as it does. Where it
 * notices everywhere, nothing is hung.
 */
export function hangUnnoticed(seen: readonly Seen[]): void {
  for (const { perch } of seen) perch.hang();
  for (let noticed = differing(seen); noticed.length; noticed = differing(noticed)) {
    const left = noticed.filter(({ perch }) => perch.retreat());
    noticed = left.map(({ perch }) => ({ perch, look: perch.look() }));
    for (const { perch } of noticed) perch.hang();
  }
}

/** Hangs hosts over what covers them; back again where the page's layout notices. */
export function riseUnnoticed(rising: readonly Rising[]): void {
  for (const { rise } of rising) rise();
  for (const { perch } of differing(rising)) perch.sink();
}

const differing = (seen: readonly Seen[]): readonly Seen[] =>
  seen.filter(({ perch, look }) => perch.look() !== look);
