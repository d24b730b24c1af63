import type { Stance } from "./body.ts";
import { limb, type Rib } from "./outline.ts";
import { type Layer, other } from "./stage.ts";

/** Leather of the plain shoes that a model wears with a product. */
const HIDES = ["#1f1d1d", "#3b2a22", "#c9a987", "#e8e4dc"] as const;

/** Plain low shoes on both feet, as seen from the front. */
export function footwear(stance: Stance, random: () => number): Layer[] {
  const hide = HIDES[Math.floor(random() * HIDES.length)] ?? HIDES[0];
  return [stance.leftLeg, stance.rightLeg].map((leg) => {
    const [x, y] = leg.at(-1) ?? [0, 0];
    const vamp: Rib[] = [
      [x * 1.09, y + 30, 18.5],
      [x * 1.12, y + 42, 21],
      [x * 1.15, y + 54, 20],
    ];
    return other(limb(vamp, "round"), hide, {
      weave: "leather",
      fall: "none",
      round: 12,
      shadow: 0.3,
      throw: 5,
    });
  });
}
