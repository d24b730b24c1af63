import { flipped, limb, mirrored, type Point, type Rib, smooth } from "./outline.ts";
import { points, ribs } from "./points.ts";
import { type Layer, other } from "./stage.ts";

/** How somebody stands, or how a garment is laid: the middle lines of arms and legs. A figure is 1000 tall, crown at 0. */
export interface Stance {
  readonly rightArm: readonly Rib[];
  readonly leftArm: readonly Rib[];
  readonly rightLeg: readonly Rib[];
  readonly leftLeg: readonly Rib[];
}

const RADII = [25, 23, 19.5, 18.5, 12] as const;
const arm = (...at: readonly (readonly [number, number])[]): Rib[] =>
  at.map(([x, y], i) => [x, y, RADII[i] ?? 12]);

const HANGING = arm([80, 200], [98, 270], [112, 352], [124, 424], [134, 494]);
const RELAXED = arm([80, 200], [103, 268], [126, 346], [137, 420], [138, 492]);
const ON_HIP = arm([80, 200], [114, 262], [150, 336], [132, 396], [100, 440]);
const SPREAD = arm([84, 196], [118, 262], [147, 338], [172, 410], [194, 478]);
const LEG: readonly Rib[] = ribs("46,505,46 47,600,44 45,716,29 46,790,31 44,925,15.5");
const LEG_FORWARD: readonly Rib[] = ribs("44,505,46 36,600,44 24,718,29 22,792,31 16,928,15.5");

/** Stances of a model, and of an empty garment. */
export const STANCES = {
  still: { rightArm: HANGING, leftArm: flipped(RELAXED), rightLeg: LEG, leftLeg: flipped(LEG) },
  hip: { rightArm: ON_HIP, leftArm: flipped(HANGING), rightLeg: LEG, leftLeg: flipped(LEG_FORWARD) },
  easy: { rightArm: RELAXED, leftArm: flipped(ON_HIP), rightLeg: LEG_FORWARD, leftLeg: flipped(LEG) },
  hung: { rightArm: HANGING, leftArm: flipped(HANGING), rightLeg: LEG, leftLeg: flipped(LEG) },
  laid: { rightArm: SPREAD, leftArm: flipped(SPREAD), rightLeg: LEG, leftLeg: flipped(LEG) },
} as const satisfies Record<string, Stance>;

/** Skin has no print and hardly any folds. */
const flesh = (outlines: readonly (readonly Point[])[], skin: string, round: number, shadow = 0.16): Layer =>
  other(outlines[0] ?? [], skin, {
    and: outlines.slice(1),
    fall: "stiff",
    shape: "column",
    deep: 0.1,
    round,
    shadow,
    throw: 6,
    flush: 0.3,
  });

/** A foot below the ankle of a leg, as seen from the front. */
export const footOf = (leg: readonly Rib[]): Rib[] => {
  const [x, y] = leg.at(-1) ?? [0, 0];
  return [
    [x, y - 12, 15.5],
    [x * 1.06, y + 20, 17],
    [x * 1.14, y + 46, 20],
  ];
};

/** Both legs with feet. */
export const legs = (stance: Stance, skin: string): Layer[] =>
  [stance.leftLeg, stance.rightLeg].map((leg) =>
    flesh([limb(leg, "round"), limb(footOf(leg), "round")], skin, 20),
  );

/** A hand at the end of an arm: palm, four fingers, thumb. */
function hand(line: readonly Rib[]): Point[][] {
  const [wrist, before] = [line.at(-1) ?? [0, 0, 0], line.at(-2) ?? [0, 0, 0]];
  const length = Math.hypot(wrist[0] - before[0], wrist[1] - before[1]) || 1;
  const [dx, dy] = [(wrist[0] - before[0]) / length, (wrist[1] - before[1]) / length];
  const inward = wrist[0] > 0 ? -1 : 1;
  const along = (far: number, aside: number, radius: number): Rib => [
    wrist[0] + dx * far + aside * inward * Math.abs(dy),
    wrist[1] + dy * far - aside * dx * inward,
    radius,
  ];
  const fingers = [-9, -3.2, 2.6, 8].map((aside, i) =>
    limb(
      [along(22, aside, 5), along(44, aside * 1.1, 4.6), along([66, 74, 71, 62][i] ?? 66, aside * 0.85, 3)],
      "round",
    ),
  );
  const palm = limb([along(-10, 0, 11.5), along(14, 1, 14), along(36, 0, 12)], "round");
  const thumb = limb([along(4, 8, 6), along(26, 15, 5), along(43, 15, 3.2)], "round");
  return [palm, thumb, ...fingers];
}

/** Arms and hands. */
export const arms = (stance: Stance, skin: string): Layer[] =>
  [stance.leftArm, stance.rightArm].map((arm) => flesh([limb(arm, "round"), ...hand(arm)], skin, 14, 0.2));

/** Trunk to the waist, and neck. */
export function trunk(skin: string): Layer[] {
  const torso = mirrored(points("0,152 28,154 62,171 88,181 99,206 82,252 73,300 62,360 62,372 0,374"));
  const neck = limb(ribs("0,106,27 0,138,25 0,158,34 0,170,50"), "flat");
  const collarbones: Layer = {
    how: "stain",
    soft: 3,
    span: [
      [-70, 150],
      [70, 190],
    ],
    draw: (board) => {
      board.strokeStyle = "rgb(120 80 65 / 0.28)";
      board.lineWidth = 4;
      for (const side of [-1, 1]) {
        board.beginPath();
        board.moveTo(side * 8, 178);
        board.quadraticCurveTo(side * 34, 168, side * 66, 172);
        board.stroke();
      }
    },
  };
  return [flesh([torso, neck], skin, 30, 0.1), collarbones];
}

/** Head without face and hair. */
export function skull(skin: string): Layer[] {
  const face = mirrored(points("0,10 32,20 44,54 42,86 29,116 11,131 0,133"));
  const ear = smooth(points("43,64 49,62 49,76 44,88"));
  return [flesh([ear], skin, 4), flesh([flipped(ear)], skin, 4), flesh([face], skin, 22, 0.4)];
}
