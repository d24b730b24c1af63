import {
  type Backdrop,
  beach,
  boards,
  carpet,
  garden,
  linen,
  masonry,
  sheetOf,
  spot,
  street,
  sweep,
} from "./backdrops.ts";

/** The places that pictures are taken in, by name; each seed gives another one of its sort. */
export const SETTINGS = {
  white: () => sheetOf("#ffffff"),
  paper: () => sheetOf("#f4f4f4"),
  mist: () => sweep("#f3f3f4", "#e6e7ea", 0.12),
  grey: () => sweep("#d7d8da", "#c2c4c7", 0.25),
  fade: () => sweep("#f2f3f5", "#b9bdc4", 0.3),
  dusk: () => sweep("#dcbfae", "#8f93b5", 0.35),
  storm: () => sweep("#6a6e76", "#3a3c42", 0.6),
  spot: () => spot("#f4f3f1", "#b3b1ae"),
  glow: () => spot("#e9d7c2", "#a4795c"),
  rose: () => sweep("#e9c9c6", "#deb6b2", 0.2),
  sage: () => sweep("#c3cdb9", "#b2bea7", 0.2),
  ochre: () => sweep("#e0bd83", "#d0a866", 0.25),
  azure: () => sweep("#bcd6e6", "#a3c4d8", 0.2),
  terracotta: () => sweep("#cf8e72", "#bd7a5e", 0.3),
  lime: () => sweep("#e2f0c6", "#d8e9b6", 0.1),
  ultramarine: () => sweep("#3b55b5", "#2c4196", 0.3),
  crimson: () => sweep("#c23040", "#a22233", 0.3),
  oak: (seed) => boards(["#9a744c", "#bd9468", "#d2ad82"], 0.16, seed),
  walnut: (seed) => boards(["#4a2f1f", "#6b4730", "#86603f"], 0.14, seed),
  ash: (seed) => boards(["#b9a68c", "#d5c5ac", "#e5d8c3"], 0.2, seed),
  tiles: (seed) => masonry("#ddd8cd", "#a9a39a", 0.3, 0.3, seed),
  sheet: (seed) => linen("#dfdcd6", 0.3, seed),
  rug: (seed) => linen("#8a7f74", 0.35, seed),
  denimBlanket: (seed) => linen("#4d6485", 0.3, seed),
  carpet: (seed) => carpet(["#8a2f30", "#c9a46a", "#27344f"], 2 * seed),
  blanket: (seed) => carpet(["#6a7f8d", "#d8d2c4", "#a9584a"], 2 * seed + 1),
  street: (seed) => street(seed),
  garden: (seed) => garden(seed),
  beach: (seed) => beach(seed),
  brick: (seed) => masonry("#9a5a45", "#c2b5a6", 0.14, 0.05, seed),
} as const satisfies Record<string, (seed: number) => Backdrop>;

export type Setting = keyof typeof SETTINGS;

/** Settings whose backdrop was put in afterwards. */
export const isCutOut = (setting: Setting): boolean => setting === "white" || setting === "paper";
