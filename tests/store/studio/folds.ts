import type { Noise } from "./noise.ts";

/** How a panel of cloth falls. */
export type Fall = "drape" | "skirt" | "pleat" | "tube" | "leg" | "stiff" | "none";

/** The place of a panel: its folds and its print run in these coordinates. */
export interface Grain {
  readonly x: number;
  readonly y: number;
  /** Radians: the direction of the weft. */
  readonly angle: number;
  /** Width at the top and length, scene units. */
  readonly width: number;
  readonly length: number;
}

/** Height of the cloth above its body at (u, v) from the panel's top middle; scene units. */
export type Folding = (u: number, v: number) => number;

/** A rounded crease where a noise crosses zero, 0–1. */
const crease = (n: number): number => Math.exp(-14 * n * n);
const PLEATS = 17;

/** Folds of one panel. `deep` 1 is ordinary cloth, less for stiff, more for fluid. */
export function foldingOf(fall: Fall, grain: Grain, deep: number, noise: Noise): Folding {
  const { width, length } = grain;
  switch (fall) {
    case "drape":
      return (u, v) => {
        const bend = 14 * noise(v / 90, 3.3);
        const long = noise((u + bend) / 46, v / 170 + 9);
        const drag = crease(noise((u * 0.7 + Math.abs(v - length * 0.5) * 0.5) / 38, v / 130 + 31));
        return deep * (7 * long + 5 * drag + 2.2 * noise(u / 19, v / 40));
      };
    case "skirt":
      return (u, v) => {
        const down = Math.min(1, Math.max(0, v / length));
        const across = u / (width * (0.5 + 0.75 * down));
        const lean = 0.35 * noise(v / 150, 8.8);
        const godet = Math.cos(11 * across + 2.6 * noise(2.4 * across + lean, 1.7));
        return (
          deep *
          ((5 + 19 * down) * godet + 8 * down * noise(9 * across + lean, v / 210) + 2 * noise(u / 24, v / 60))
        );
      };
    case "pleat":
      return (u, v) => {
        const down = Math.min(1, Math.max(0, v / length));
        const across = (PLEATS * u) / (width * (1 + 0.62 * down)) + 0.2 * noise(v / 200, u / 60);
        const saw = across - Math.floor(across);
        return deep * ((5 + 5 * down) * (saw < 0.82 ? saw : (1 - saw) * 4.5) + 3 * noise(u / 60, v / 190));
      };
    case "tube":
      return (u, v) => {
        const joint = Math.exp(-(((v / length - 0.5) / 0.2) ** 2));
        const cross = crease(noise(u / 55 + v / 60, v / 26)) * (0.35 + joint);
        return deep * (4.5 * cross + 4 * noise(u / 24, v / 120) + 1.4 * noise(u / 13, v / 30));
      };
    case "leg":
      return (u, v) => {
        const side = u < 0 ? 40 : 0;
        const knee =
          Math.exp(-(((v - 345) / 60) ** 2)) +
          0.8 * Math.exp(-(((v - 560) / 70) ** 2)) +
          0.7 * Math.exp(-(((v - 175) / 40) ** 2));
        const cross = crease(noise(Math.abs(u) / 60 + side + v / 110, v / 30 + side));
        return (
          deep * ((1 + 4 * knee) * cross + 5 * noise(u / 26 + side, v / 190) + 1.5 * noise(u / 14, v / 44))
        );
      };
    case "stiff":
      return (u, v) => deep * (3.4 * noise(u / 60, v / 140) + 1.6 * noise(u / 26, v / 50));
    case "none":
      return () => 0;
  }
}
