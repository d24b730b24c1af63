import { limb } from "./outline.ts";
import { ribs } from "./points.ts";
import { type Layer, other, stroke } from "./stage.ts";

const HOOK: readonly (readonly [number, number])[] = Array.from({ length: 20 }, (_, i) => {
  const t = -0.6 + (i / 19) * 4.2;
  return [15 * Math.cos(t - 1.6), 84 + 15 * Math.sin(t - 1.6)] as const;
});

/** A wooden hanger on a rail; `clips` for skirts and trousers. */
export function hanger(clips: boolean): Layer[] {
  const drop = clips ? 214 : 0;
  const metal = (points: readonly (readonly [number, number])[], width: number): Layer =>
    stroke(
      points.map(([x, y]) => [x, y + drop] as const),
      "#8f9093",
      width,
      0.4,
    );
  const wood = { weave: "leather", fall: "stiff", deep: 0.4, round: 6, shadow: 0.35, throw: 9 } as const;
  const rail = limb(
    [
      [-420, 62 + drop, 7],
      [0, 62 + drop, 7],
      [420, 62 + drop, 7],
    ],
    "flat",
  );
  const bow = clips
    ? limb(
        [
          [-80, 142 + drop, 6],
          [0, 138 + drop, 7],
          [80, 142 + drop, 6],
        ],
        "round",
      )
    : limb(ribs("-92,186,6 -50,160,8 0,146,9 50,160,8 92,186,6"), "round");
  return [
    other(rail, "#a9a49b", { weave: "leather", fall: "none", round: 6, shadow: 0.3, throw: 12 }),
    metal([...HOOK, [2, 112], [0, 140]], 4),
    other(bow, "#a57b4e", wood),
    ...(clips
      ? [-62, 62].map((x) =>
          metal(
            [
              [x, 138],
              [x, 168],
            ],
            9,
          ),
        )
      : []),
  ];
}
