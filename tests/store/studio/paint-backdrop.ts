import { type Light, lightOf, mixed, scaled } from "./light.ts";
import { cloudy, type Noise, noiseFrom } from "./noise.ts";
import { fillFrame, HEIGHT, type Photo, WIDTH } from "./photo.ts";
import { randomFrom } from "./random.ts";
import type { Backdrop } from "./recipe.ts";

type Fill = (x: number, y: number, out: [number, number, number]) => void;

/** Paper backdrops: colour at the top and at the bottom of the sweep. */
const PAPERS: Partial<Record<Backdrop, readonly [top: string, bottom: string]>> = {
  white: ["#fbfbfa", "#f6f6f5"],
  grey: ["#d3d4d5", "#c3c4c6"],
  fade: ["#eef0f2", "#b9bdc4"],
  dusk: ["#d9b8a8", "#8f93b5"],
  rose: ["#e9c9c6", "#deb6b2"],
  sage: ["#c3cdb9", "#b2bea7"],
  ochre: ["#e0bd83", "#d0a866"],
  azure: ["#bcd6e6", "#a3c4d8"],
  terracotta: ["#cf8e72", "#bd7a5e"],
};

/** Floor boards: dark of the grain, ground, light of the grain. */
const WOODS: Partial<Record<Backdrop, readonly [string, string, string]>> = {
  oak: ["#9a744c", "#bd9468", "#d2ad82"],
  walnut: ["#4a2f1f", "#6b4730", "#86603f"],
  ash: ["#b9a68c", "#d5c5ac", "#e5d8c3"],
};

/** Share of the frame above the skirting board in a room. */
const WALL = 0.86;

/** A sheet of paper that sweeps from wall to floor, lit from the upper left, darker in the corners. */
function paper(top: Light, bottom: Light, plain: boolean): Fill {
  return (x, y, out) => {
    const s = x / WIDTH - 0.42;
    const t = y / HEIGHT;
    const pool = plain ? 1 - 0.03 * (s * s + (t - 0.45) ** 2) : 1.05 - 0.34 * (s * s * 1.3 + (t - 0.42) ** 2);
    const bend = Math.min(1, Math.max(0, (t - 0.2) / 0.7));
    const low = bend * bend * (3 - 2 * bend);
    for (let c = 0; c < 3; c++) out[c] = ((top[c] ?? 0) * (1 - low) + (bottom[c] ?? 0) * low) * pool;
  };
}

/** Floor boards seen from above: each with its own tone, long grain, growth rings, dark joints. */
function boards(tones: readonly [Light, Light, Light], noise: Noise, seed: number): Fill {
  const random = randomFrom(seed);
  const [wide, turn] = [74 + 26 * random(), (random() - 0.5) * 0.5];
  const upright = random() < 0.6 ? turn : turn + Math.PI / 2;
  const [cos, sin] = [Math.cos(upright), Math.sin(upright)];
  const grain = cloudy(noise);
  return (px, py, out) => {
    const [x, y] = [(px - 240) * cos + (py - 320) * sin + 4000, (py - 320) * cos - (px - 240) * sin + 4000];
    const plank = Math.floor(x / wide);
    const across = x / wide - plank;
    const shift = 900 * (1 + noise(plank * 7.7, 0.5));
    const [piece, along] = [Math.floor((y + shift) / 620), (y + shift) / 620 - Math.floor((y + shift) / 620)];
    const own = noise(plank * 5.3 + 0.5, piece * 3.1 + 0.5);
    const drift = 26 * noise(plank * 9.1 + y / 190, piece + x / 300);
    const rings = Math.sin((x + drift * 1.6 + 300 * own) / (5 + 3 * own)) * 0.5 + 0.5;
    const fibre = grain(x / 2.1, y / 70 + plank * 13);
    const dark = 0.42 * rings ** 3 + 0.28 * fibre;
    const base = mixed(tones[1], dark > 0 ? tones[0] : tones[2], Math.min(1, Math.abs(dark)));
    const joint = Math.min(across * wide, (1 - across) * wide, along * 620, (1 - along) * 620);
    const gap = joint < 1.5 ? 0.45 + 0.3 * joint : 1;
    const bevel = joint < 4 ? 0.96 : 1;
    const pool = 1.06 - 0.28 * ((px / WIDTH - 0.4) ** 2 + (py / HEIGHT - 0.4) ** 2);
    const light = (1 + 0.13 * own) * gap * bevel * pool;
    for (let c = 0; c < 3; c++) out[c] = (base[c] ?? 0) * light;
  };
}

/** A painted wall with the marks of the roller. */
function plaster(noise: Noise): Fill {
  const [paint, marks] = [lightOf("#e4e0d8"), cloudy(noise)];
  return (x, y, out) => {
    const pool = 1.04 - 0.3 * ((x / WIDTH - 0.35) ** 2 + (y / HEIGHT - 0.3) ** 2);
    const mark = 1 + 0.025 * marks(x / 60, y / 90) + 0.012 * marks(x / 3, y / 3);
    for (let c = 0; c < 3; c++) out[c] = (paint[c] ?? 0) * pool * mark;
  };
}

/** A wall, a skirting board and a floor that runs away from the camera. */
function room(noise: Noise, tones: readonly [Light, Light, Light]): Fill {
  const [wall, marks] = [scaled(lightOf("#d8d6d2"), 1), cloudy(noise)];
  const board = lightOf("#efeeeb");
  return (x, y, out) => {
    const t = y / HEIGHT;
    const pool = 1.05 - 0.3 * ((x / WIDTH - 0.3) ** 2 + (t - 0.3) ** 2);
    if (t < WALL) {
      const skirting = t > WALL - 0.075;
      const groove = Math.abs(t - (WALL - 0.075)) < 0.002 || Math.abs(t - (WALL - 0.062)) < 0.0015 ? 0.78 : 1;
      const mark = 1 + 0.02 * marks(x / 70, y / 90);
      const base = skirting ? board : wall;
      for (let c = 0; c < 3; c++) out[c] = (base[c] ?? 0) * pool * mark * groove;
      return;
    }
    const depth = 0.05 + (t - WALL) / (1 - WALL);
    const across = (x / WIDTH - 0.5) / (0.6 + 0.8 * depth);
    const plank = Math.floor(across * 9);
    const edge = Math.abs(across * 9 - plank - 0.5) > 0.485 ? 0.6 : 1;
    const fibre = 0.5 + 0.5 * marks(across * 160 + plank * 31, depth * 5);
    const base = mixed(tones[0], tones[2], 0.25 + 0.6 * fibre);
    const shade = (t < WALL + 0.012 ? 0.6 : 1) * edge * pool * (0.9 + 0.12 * noise(plank * 3.3 + 0.5, 0.5));
    for (let c = 0; c < 3; c++) out[c] = (base[c] ?? 0) * shade;
  };
}

function fillOf(backdrop: Backdrop, seed: number): Fill {
  const noise = noiseFrom(seed);
  const sheet = PAPERS[backdrop];
  if (sheet) return paper(lightOf(sheet[0]), lightOf(sheet[1]), backdrop === "white");
  if (backdrop === "plaster") return plaster(noise);
  const [dark, ground, pale] = WOODS[backdrop] ?? ["#8a6848", "#b08c66", "#c8a67e"];
  const tones = [lightOf(dark), lightOf(ground), lightOf(pale)] as const;
  return backdrop === "room" ? room(noise, tones) : boards(tones, noise, seed);
}

/** Fills the photo with what stands behind or lies under the piece. */
export const paintBackdrop = (photo: Photo, backdrop: Backdrop, seed: number): void =>
  fillFrame(photo, fillOf(backdrop, seed));
