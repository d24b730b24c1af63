import { randomFrom, seedOf } from "../../store/studio/random.ts";
import { CUTS, type Cut } from "../../store/studio/recipe.ts";
import { round } from "./dyes.ts";
import { alone, aloneDetail, otherDye, portrait, sizeChart, worn, wornDetail } from "./other-shots.ts";
import { peopleScenes, peopleShots, type Scene } from "./people.ts";
import { type KindPicture, type Shot, shoot } from "./shot.ts";
import { type Piece, type Pose, pieceOf, thingRules, thingShots } from "./things.ts";

/** A product with its photos. The first is one of `kindPictures`; what the others show is said by `shown`. */
export interface ViewedProduct {
  readonly kind: string;
  readonly first: KindPicture;
  readonly others: readonly KindPicture[];
  /** Of each other photo: how the piece is seen in it, or what it shows instead. */
  readonly shown: readonly Shown[];
}

type Shown = "worn" | "alone" | "detail" | "variant" | "portrait" | "chart";

/** Photos beside the first, and in how many of a hundred products one of them shows something else; common practice, no source. */
const OTHERS = [1, 2, 2, 3] as const;
const WRONG = 15;
/** Of a scene's ten people, and of a rule's pictures, these are taken again. */
const TONES_EACH = 3;
const EVERY = 2;

type Way = readonly [Shown, (random: () => number) => Pick<Shot, "backdrop" | "lamp" | "near" | "figures">];

/** The further photos of one product, drawn from the ways it may be taken in. */
function othersOf(seed: string, first: Shot, right: readonly Way[], wrong: readonly Way[]) {
  const random = randomFrom(seedOf(`${seed} others`));
  const count = round(OTHERS, Math.floor(4 * random()));
  const start = Math.floor(right.length * random());
  const ways = Array.from({ length: count }, (_, i) => round(right, start + i));
  if (100 * random() < WRONG) ways[Math.floor(count * random())] = round(wrong, Math.floor(9 * random()));
  const others = ways.map(([, take], i): KindPicture => {
    const own = randomFrom(seedOf(`${seed} other ${i}`));
    return shoot(`${seed}-other-${i + 1}`, { ...first, seed: `${seed} other ${i}`, ...take(own) });
  });
  return { others, shown: ways.map(([what]) => what) };
}

function peopleWays(scene: Scene, number: number, tone: number): { right: Way[]; wrong: Way[] } {
  const piece: Piece = { cut: scene.cut, cloth: scene.cloth, word: scene.word };
  const variant: Scene = { ...scene, cloth: otherDye(scene.cloth, number) };
  return {
    right: [
      ["worn", (random) => worn(scene, number, tone, random)],
      ["detail", (random) => wornDetail(scene, number, tone, random)],
      ["worn", (random) => worn(scene, number, tone, random)],
      // A hat's drawing sits on a head.
      ...(CUTS[scene.cut] === "headwear"
        ? []
        : [["alone", (random) => alone(piece, number % 2 ? "flat" : "ghost", number, random)] satisfies Way]),
    ],
    wrong: [
      ["variant", (random) => worn(variant, number, tone, random)],
      ["portrait", (random) => portrait(scene, number, tone, random)],
      ["chart", (random) => sizeChart(number, random)],
    ],
  };
}

function thingWays(piece: Piece, pose: Pose, number: number, tone: number): { right: Way[]; wrong: Way[] } {
  const isThing = pose === "still" || pose === "small";
  const poses: readonly Pose[] = isThing ? ["still", "small"] : ["ghost", "flat", "hanger"];
  const [again, next] = [round(poses, number), round(poses, number + 1)];
  const variant = { ...piece, cloth: otherDye(piece.cloth, number) };
  const scene: Scene = {
    kind: "",
    cut: piece.cut,
    cloth: piece.cloth,
    word: piece.word,
    finish: null,
    companions: [
      { cut: CUTS[piece.cut] === "bottom" ? "vest" : "jeans", hex: number % 2 ? "#3a4a66" : "#efeeea" },
    ],
    rows: [-40, 860],
    aspect: 0.75,
    setting: "mist",
    style: round(["long", "bob", "bun", "short"] as const, number),
  };
  return {
    right: [
      ["alone", (random) => alone(piece, again, number + 3, random)],
      ["detail", (random) => aloneDetail(piece, number, random)],
      isThing
        ? ["alone", (random) => alone(piece, next, number + 5, random)]
        : ["worn", (random) => worn(scene, number, tone, random)],
    ],
    wrong: [
      ["variant", (random) => alone(variant, again, number + 1, random)],
      ["chart", (random) => sizeChart(number, random)],
    ],
  };
}

/** Some products of every kind, or of some kinds, with two to four photos each; the same at each call. */
export function viewedProducts(only?: readonly string[]): ViewedProduct[] {
  const products: ViewedProduct[] = [];
  const add = (kind: string, first: Shot, id: string, { right, wrong }: { right: Way[]; wrong: Way[] }) => {
    products.push({ kind, first: shoot(id, first), ...othersOf(id, first, right, wrong) });
  };
  const scenes = peopleScenes();
  peopleShots().forEach(([kind, shots], number) => {
    const scene = scenes[number];
    if (!scene || (only && !only.includes(kind))) return;
    const list = shots();
    for (let i = 0; i < TONES_EACH; i++) {
      const tone = 1 + ((number + 3 * i) % list.length);
      const first = round(list, tone - 1);
      add(kind, first, `${first.seed}-${tone}`, peopleWays(scene, number, tone));
    }
  });
  const rules = thingRules();
  thingShots().forEach(([kind, shots], number) => {
    if (only && !only.includes(kind)) return;
    const [, , pose = "", dyes = "", cuts = ""] = rules[number] ?? [];
    shots().forEach((first, i) => {
      if (i % EVERY !== 0) return;
      const piece = pieceOf(round(cuts.split(" "), i) as Cut, dyes, i + 5 * number);
      const alike: Pose = pose === "several" ? "ghost" : (pose as Pose);
      add(kind, first, first.seed, thingWays(piece, alike, i + number, 1 + ((i * 3) % 10)));
    });
  });
  return products;
}
