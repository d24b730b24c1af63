import { type Light, lightOf, mixed } from "../../store/studio/light.ts";
import { cloudy, noiseFrom } from "../../store/studio/noise.ts";
import { printingOf } from "../../store/studio/print.ts";
import { randomFrom } from "../../store/studio/random.ts";
import { FINE, type Sheet } from "./sheet.ts";

/** The light of a backdrop at (x, y), 0–1 from the top left, written into `out`. */
export type Backdrop = (x: number, y: number, out: [number, number, number]) => void;

/** Painted backdrops: the ten people of a scene stand before the same. */
const painted = new WeakMap<Backdrop, Float32Array>();

function lightBehind(backdrop: Backdrop): Float32Array {
  const known = painted.get(backdrop);
  if (known) return known;
  const light = new Float32Array(FINE * FINE * 3);
  const out: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < FINE * FINE; i++) {
    backdrop(((i % FINE) + 0.5) / FINE, (Math.floor(i / FINE) + 0.5) / FINE, out);
    light.set(out, 3 * i);
  }
  painted.set(backdrop, light);
  return light;
}

export function paintBackdrop(sheet: Sheet, backdrop: Backdrop): void {
  const light = lightBehind(backdrop);
  for (let i = 0; i < light.length; i++) sheet.light[i] = (light[i] ?? 0) * (sheet.lamp.wall[i % 3] ?? 1);
}

const put = (out: [number, number, number], light: Light, by = 1): void => {
  for (let c = 0; c < 3; c++) out[c] = (light[c] ?? 0) * by;
};
const step = (t: number, from: number, to: number): number => {
  const s = Math.min(1, Math.max(0, (t - from) / (to - from)));
  return s * s * (3 - 2 * s);
};

/** The white that a shop cuts its pieces out on. */
export const sheetOf = (hex: string): Backdrop => {
  const light = lightOf(hex);
  return (_x, _y, out) => put(out, light);
};

/** Paper that sweeps from a wall to a floor: two tones, and a lamp's pool of light that leaves the corners `dark`. */
export const sweep = (top: string, bottom: string, dark: number, poolX = 0.42): Backdrop => {
  const [high, low] = [lightOf(top), lightOf(bottom)];
  return (x, y, out) => {
    const pool = 1 + dark * 0.12 - dark * (1.5 * (x - poolX) ** 2 + 1.2 * (y - 0.42) ** 2);
    put(out, mixed(high, low, step(y, 0.15, 0.95)), Math.max(0.1, pool));
  };
};

/** A spot on a wall, round and bright, as a low-cost studio has it. */
export const spot = (inner: string, outer: string): Backdrop => {
  const [bright, dim] = [lightOf(inner), lightOf(outer)];
  return (x, y, out) => put(out, mixed(bright, dim, step(Math.hypot(x - 0.5, y - 0.45), 0.12, 0.72)));
};

/** Boards or planks: three tones, joints every `wide` of the width. */
export const boards = (tones: readonly [string, string, string], wide: number, seed: number): Backdrop => {
  const [dark, ground, pale] = [lightOf(tones[0]), lightOf(tones[1]), lightOf(tones[2])];
  const noise = noiseFrom(seed);
  const grain = cloudy(noise);
  const upright = seed % 3 !== 0;
  return (px, py, out) => {
    const [x, y] = upright ? [px, py] : [py, px];
    const plank = Math.floor(x / wide);
    const own = noise(plank * 5.3 + 0.5, 0.5);
    const fibre = 0.6 * grain(x * 60, y * 5 + plank * 13) + 0.4 * own;
    const joint = Math.abs(x / wide - plank - 0.5) > 0.48 ? 0.5 : 1;
    put(
      out,
      mixed(ground, fibre > 0 ? pale : dark, Math.min(1, Math.abs(fibre) * 1.3)),
      joint * (1.05 - 0.2 * px),
    );
  };
};

/** Tiles or bricks with mortar. */
export const masonry = (
  stone: string,
  mortar: string,
  wide: number,
  high: number,
  seed: number,
): Backdrop => {
  const [brick, joint] = [lightOf(stone), lightOf(mortar)];
  const noise = noiseFrom(seed);
  return (x, y, out) => {
    const row = Math.floor(y / high);
    const across = x / wide + (wide > high * 1.3 ? (row % 2) * 0.5 : 0);
    const column = Math.floor(across);
    const [u, v] = [Math.abs(across - column - 0.5), Math.abs(y / high - row - 0.5)];
    const edge = u > 0.47 || v > 0.5 - (0.03 * wide) / high;
    const own = 1 + 0.22 * noise(column * 3.7 + 0.5, row * 5.1 + 0.5) + 0.12 * noise(x * 70, y * 70);
    put(out, edge ? joint : brick, own * (1.06 - 0.25 * y));
  };
};

/** Wrinkled bed linen or a wool rug. */
export const linen = (hex: string, depth: number, seed: number): Backdrop => {
  const light = lightOf(hex);
  const noise = noiseFrom(seed);
  const cloud = cloudy(noise);
  return (x, y, out) => {
    const fold = Math.exp(-18 * noise(x * 4 + y * 2, y * 3.1 - x) ** 2);
    put(out, light, 1 + depth * (0.5 * cloud(x * 5, y * 5) - 0.5 * fold + 0.12 * noise(x * 80, y * 80)));
  };
};

/** A patterned carpet or blanket. */
export const carpet = (dyes: readonly string[], seed: number): Backdrop => {
  const lights = dyes.map(lightOf);
  const printing = printingOf(seed % 2 ? "floral" : "check", lights.length, 2.2, seed % 4096);
  const ink = { under: 0, over: 0, t: 0 };
  const noise = noiseFrom(seed);
  return (x, y, out) => {
    printing(x * 560 + 40, y * 640 + 40, 4, ink);
    const both = mixed(lights[ink.under] ?? [0, 0, 0], lights[ink.over] ?? [0, 0, 0], ink.t);
    put(out, both, 1 + 0.12 * noise(x * 90, y * 90));
  };
};

/** Leaves out of focus over a path: spots of light and dark green. */
export const garden = (seed: number): Backdrop => {
  const cloud = cloudy(noiseFrom(seed));
  const [shade, leaf, sun, path] = ["#27351f", "#557a35", "#c4d08a", "#a99d8b"].map(lightOf) as [
    Light,
    Light,
    Light,
    Light,
  ];
  const horizon = 0.6 + 0.2 * randomFrom(seed)();
  return (x, y, out) => {
    const n = cloud(x * 7, y * 8) * 1.3 + 0.25 * cloud(x * 30, y * 30);
    const green =
      n > 0.25
        ? mixed(leaf, sun, Math.min(1, (n - 0.25) * 2))
        : mixed(leaf, shade, Math.min(1, (0.25 - n) * 1.3));
    const ground = step(y + 0.03 * cloud(x * 9, 2), horizon - 0.05, horizon + 0.05);
    const gravel = 1 + 0.15 * cloud(x * 40, y * 40);
    put(out, mixed(green, [path[0] * gravel, path[1] * gravel, path[2] * gravel], ground));
  };
};

/** Houses, windows and a pavement, a little out of focus; sky above. */
export const street = (seed: number): Backdrop => {
  const random = randomFrom(seed);
  const noise = noiseFrom(seed);
  const wall = lightOf(
    ["#b8a48c", "#8d5a49", "#c9c5bb", "#77808a", "#d9b48a"][Math.floor(random() * 5)] ?? "#b8a48c",
  );
  const [sky, glass, frame, ground] = ["#cfdfec", "#39434d", "#e6e2da", "#8d8a86"].map(lightOf) as [
    Light,
    Light,
    Light,
    Light,
  ];
  const [roof, kerb, wide] = [0.05 + 0.15 * random(), 0.72 + 0.1 * random(), 0.16 + 0.1 * random()];
  return (x, y, out) => {
    const soft = 0.012;
    const [u, v] = [x / wide - Math.floor(x / wide), (y - roof) / 0.26 - Math.floor((y - roof) / 0.26)];
    const inside = Math.min(
      step(u, 0.22, 0.26) - step(u, 0.74, 0.78),
      step(v, 0.2, 0.24) - step(v, 0.8, 0.84),
    );
    const pane = Math.min(
      step(u, 0.28, 0.32) - step(u, 0.68, 0.72),
      step(v, 0.26, 0.3) - step(v, 0.74, 0.78),
    );
    const house = mixed(mixed(wall, frame, inside), glass, pane);
    const lower = mixed(house, ground, step(y, kerb - soft, kerb + soft));
    put(out, mixed(sky, lower, step(y, roof - soft, roof + soft)), 1 + 0.08 * noise(x * 50, y * 50));
  };
};

/** Sand, water and a hazy sky. */
export const beach = (seed: number): Backdrop => {
  const noise = noiseFrom(seed);
  const [sky, sea, foam, sand] = ["#bcd3e4", "#5f93a5", "#e4ebe8", "#cdb592"].map(lightOf) as [
    Light,
    Light,
    Light,
    Light,
  ];
  return (x, y, out) => {
    const water = mixed(sea, foam, step(y + 0.02 * noise(x * 6, 1), 0.52, 0.6));
    const low = mixed(water, sand, step(y + 0.03 * noise(x * 5, 9), 0.58, 0.66));
    put(out, mixed(sky, low, step(y, 0.33, 0.36)), 1 + 0.07 * noise(x * 70, y * 120));
  };
};
