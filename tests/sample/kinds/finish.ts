import type { Noise } from "../../store/studio/noise.ts";
import { type Inked, printingOf } from "../../store/studio/print.ts";
import { seedOf } from "../../store/studio/random.ts";
import type { Cloth } from "../../store/studio/recipe.ts";

/** What makes a cloth harder to read than a dyed weave. */
export type Finish = "lace" | "mesh" | "sequin" | "metal";

/** A cloth with a finish, as panels carry it. */
export interface FinishedCloth extends Cloth {
  readonly finish: Finish;
}

export function finishOf(cloth: Cloth): Finish | null {
  return "finish" in cloth ? (cloth as FinishedCloth).finish : null;
}

/** Stuff of a piece that is not its main cloth and yet its own: a sole, an insole, a heel. `part`: its number, 8–31. */
interface PartCloth extends Cloth {
  readonly part: number;
}

/** The part that a cloth makes, 0 for all other cloth. */
export const partOf = (cloth: Cloth): number => ("part" in cloth ? (cloth as PartCloth).part : 0);

/** The same cloth as a part of the piece; stuff of one colour is one part. */
export function asPart(cloth: Cloth): PartCloth {
  return { ...cloth, part: 8 + (seedOf(cloth.dyes[0] ?? "") % 24) };
}

/** Cover of a net of threads; by eye from how much of a lining is seen through tulle and through lace grounds. */
const MESH_COVER = 0.58;
const LACE_GROUND = 0.42;
const LACE_MOTIF = 0.97;

/** How much of what is behind a cloth it hides at (u, v), 0–1. `px`: scene units a pixel. */
export type Veil = (u: number, v: number, px: number) => number;

export function veilOf(finish: Finish | null, seed: number, noise: Noise): Veil | null {
  if (finish === "mesh") return (u, v) => MESH_COVER + 0.08 * noise(u / 40, v / 70);
  if (finish !== "lace") return null;
  const motifs = printingOf("floral", 3, 0.62, seed % 4096);
  const ink: Inked = { under: 0, over: 0, t: 0 };
  return (u, v, px) => {
    motifs(u, v, px, ink);
    const motif = ink.under > 0 ? 1 : ink.t;
    return LACE_GROUND + (LACE_MOTIF - LACE_GROUND) * motif;
  };
}

/** Scene units a sequin. */
const SEQUIN = 7;

/** How a small plate at (u, v) is tilted against the cloth, as a factor of light and a share of the lamp's own light. */
export type Sparkle = (u: number, v: number) => readonly [light: number, glint: number];

export function sparkleOf(finish: Finish | null, noise: Noise): Sparkle | null {
  if (finish !== "sequin") return null;
  return (u, v) => {
    const row = Math.floor(v / SEQUIN);
    const column = Math.floor(u / SEQUIN + (row % 2) * 0.5);
    const tilt = noise(column * 1.7 + 0.5, row * 2.3 + 0.5);
    return [tilt < 0 ? 1 + 0.6 * tilt : 1 + 0.9 * tilt, tilt > 0.72 ? (tilt - 0.72) * 2.4 : 0];
  };
}
