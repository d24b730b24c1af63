import { footOf, type Stance } from "../body.ts";
import { limb, type Rib, smooth } from "../outline.ts";
import { knots } from "../points.ts";
import type { Cloth } from "../recipe.ts";
import { type Garment, type Layer, panel } from "../stage.ts";

export function tights(cloth: Cloth, stance: Stance): Garment {
  return {
    below: [stance.leftLeg, stance.rightLeg].map((leg): Layer => {
      const wider = leg.map(([x, y, r]): Rib => [x, y, r + 0.8]);
      return panel(limb(wider, "round"), cloth, {
        and: [limb(footOf(leg), "round")],
        fall: "stiff",
        shape: "column",
        deep: 0.1,
        shadow: 0.16,
        throw: 6,
        round: 20,
      });
    }),
  };
}

/** A pair of socks, laid flat one over the other. */
export function socks(cloth: Cloth): Garment {
  const sock = (dx: number, dy: number): Layer[] => {
    const at = (points: readonly (readonly [number, number, 1?])[]) =>
      smooth(points.map(([x, y, c]) => (c ? [x + dx, y + dy, c] : [x + dx, y + dy])));
    return [
      panel(
        at(
          knots(
            "-40,-150! 42,-154! 46,-40 52,60 40,112 -20,146 -96,170 -136,152 -132,110 -84,82 -46,40 -42,-50",
          ),
        ),
        cloth,
        { fall: "stiff", deep: 0.7, round: 14, shadow: 0.4, throw: 8, repeat: 1.3 },
      ),
      panel(
        at(knots("-43,-186! 44,-190! 43,-136! -41,-132!")),
        { ...cloth, print: "plain" },
        { fall: "none", round: 10, shadow: 0.25, throw: 4 },
      ),
    ];
  };
  return { trunk: [...sock(52, -36), ...sock(-20, 20)] };
}
