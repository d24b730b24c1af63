import { randomFrom } from "./random.ts";
import type { Print } from "./recipe.ts";

/** Which dyes meet at a point of cloth: `t` of `over` on `under`, 0–1. */
export interface Inked {
  under: number;
  over: number;
  t: number;
}

/** Writes what is printed at (u, v), in scene units; `soft` is the size of a pixel there. */
export type Printing = (u: number, v: number, soft: number, out: Inked) => void;

const wrap = (x: number, period: number): number => x - period * Math.floor(x / period);
/** 1 inside (negative distance), 0 outside, over one pixel. */
const cover = (distance: number, soft: number): number => Math.min(1, Math.max(0, 0.5 - distance / soft));

function stripes(dyes: number, period: number): Printing {
  return (_, v, soft, out) => {
    const band = Math.floor(v / period);
    const inside = Math.abs(wrap(v, period) - period / 2);
    out.under = 0;
    out.over = dyes > 2 && wrap(band, 3) === 2 ? 2 : 1;
    out.t = cover(inside - period * 0.2, soft);
  };
}

function dots(period: number): Printing {
  return (u, v, soft, out) => {
    const row = Math.floor(v / period);
    const x = wrap(u + (row % 2 ? period / 2 : 0), period) - period / 2;
    const y = wrap(v, period) - period / 2;
    out.under = 0;
    out.over = 1;
    out.t = cover(Math.hypot(x, y) - period * 0.27, soft);
  };
}

/** A woven check: bands of the second dye both ways, and thin lines of the third. */
function check(period: number): Printing {
  return (u, v, soft, out) => {
    const [x, y] = [wrap(u, period), wrap(v, period)];
    const near = (at: number, half: number): number =>
      cover(Math.min(Math.abs(x - period * at), Math.abs(y - period * at)) - period * half, soft);
    const line = near(0.1, 0.045);
    out.under = 0;
    out.over = line > 0 ? 2 : 1;
    out.t = line > 0 ? line : near(0.6, 0.1);
  };
}

/** Gingham: the second dye where bands cross, the third where one band lies on the ground. */
function gingham(period: number): Printing {
  return (u, v, soft, out) => {
    const inBand = (at: number): number =>
      cover(Math.abs(wrap(at, period) - period / 2) - period * 0.15, soft);
    const [x, y] = [inBand(u), inBand(v)];
    const [more, less] = [Math.max(x, y), Math.min(x, y)];
    out.under = less > 0 ? 2 : 0;
    out.over = less > 0 ? 1 : 2;
    out.t = less > 0 ? less : more;
  };
}

interface Flower {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly turn: number;
  readonly dye: number;
}

const FLOWER_CELLS = 32;

/** Scattered five-petalled flowers with a heart and two leaves. */
function floral(dyes: number, cell: number, seed: number): Printing {
  const random = randomFrom(seed);
  const bed: Flower[] = Array.from({ length: FLOWER_CELLS * FLOWER_CELLS }, (_, i) => ({
    x: (0.2 + 0.6 * random()) * cell,
    y: (0.2 + 0.6 * random()) * cell,
    size: cell * (0.26 + 0.2 * random()),
    turn: random() * 6.283,
    dye: 1 + (dyes > 3 ? (i % 3 === 2 ? 1 : 0) : 0),
  }));
  const leafDye = dyes - 1;
  return (u, v, soft, out) => {
    const [column, row] = [Math.floor(u / cell), Math.floor(v / cell)];
    out.under = 0;
    out.over = 1;
    out.t = 0;
    for (let j = row - 1; j <= row + 1; j++)
      for (let i = column - 1; i <= column + 1; i++) {
        const flower = bed[wrap(j, FLOWER_CELLS) * FLOWER_CELLS + wrap(i, FLOWER_CELLS)];
        if (!flower) continue;
        const [x, y] = [u - i * cell - flower.x, v - j * cell - flower.y];
        const reach = Math.hypot(x, y);
        if (reach > flower.size * 1.7) continue;
        const angle = Math.atan2(y, x) - flower.turn;
        const petal = flower.size * (0.62 + 0.38 * Math.abs(Math.cos(2.5 * angle)));
        const leaf =
          Math.hypot(reach - flower.size * 1.2, 5 * Math.sin(angle / 2) * flower.size * 0.4) -
          flower.size * 0.42;
        const [onPetal, onHeart] = [cover(reach - petal, soft), cover(reach - flower.size * 0.24, soft)];
        if (onPetal > 0) {
          const heart = onHeart > 0.5;
          out.under = heart ? flower.dye : 0;
          out.over = heart ? leafDye : flower.dye;
          out.t = heart ? onHeart : onPetal;
          return;
        }
        if (cover(leaf, soft) > out.t) {
          out.over = leafDye;
          out.t = cover(leaf, soft);
        }
      }
  };
}

/** Sizes of the repeats, scene units (a standing figure is 1000): stripe, dot, check, gingham, flower bed. */
const REPEAT = { stripes: 26, dots: 30, check: 44, gingham: 26, floral: 44 };

/** How a cloth of so many dyes is printed. `size` scales the repeat. */
export function printingOf(print: Print, dyes: number, size: number, seed: number): Printing {
  if (print === "stripes") return stripes(dyes, REPEAT.stripes * size);
  if (print === "dots") return dots(REPEAT.dots * size);
  if (print === "check") return check(REPEAT.check * size);
  if (print === "gingham") return gingham(REPEAT.gingham * size);
  if (print === "floral") return floral(dyes, REPEAT.floral * size, seed);
  return (_u, _v, _soft, out) => {
    out.under = 0;
    out.over = 0;
    out.t = 0;
  };
}
