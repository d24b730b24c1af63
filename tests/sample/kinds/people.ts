import { garmentOf } from "../../store/studio/garments/garment-of.ts";
import type { HairStyle } from "../../store/studio/head.ts";
import { MONK_SKIN } from "../../store/studio/monk-skin.ts";
import { randomFrom, seedOf } from "../../store/studio/random.ts";
import { type Cloth, CUTS, type Cut, type Print, type Weave } from "../../store/studio/recipe.ts";
import type { Layer } from "../../store/studio/stage.ts";
import { dyeOf, HAIRS, round } from "./dyes.ts";
import { crossbody, graphic } from "./extras.ts";
import type { Finish, FinishedCloth } from "./finish.ts";
import { lampOf } from "./lamp.ts";
import { PEOPLE_TABLE } from "./people-table.ts";
import { asPerson, type Companion, dressed, STANDING } from "./person.ts";
import { isCutOut, SETTINGS, type Setting } from "./settings.ts";
import { viewOf } from "./sheet.ts";
import type { Figure, Shot } from "./shot.ts";
import { sticker } from "./sticker.ts";
import { titleOf } from "./titles.ts";

/** What is worn and no garment. */
export interface Extra {
  readonly cut: "graphic" | "crossbody";
  readonly hex: string;
}

/** A scene of the table. */
export interface Scene {
  readonly kind: string;
  readonly cut: Cut;
  readonly cloth: Cloth;
  readonly word: string;
  readonly finish: Finish | null;
  readonly companions: readonly (Companion | Extra)[];
  readonly rows: readonly [number, number];
  readonly aspect: number;
  readonly setting: Setting;
  readonly style: HairStyle;
}

function readScene(line: string): Scene {
  const [kind = "", what = "", finish = "", others = "", frame = "", setting = "", style = ""] = line
    .split("|")
    .map((cell) => cell.trim());
  const [cut, weave, print, ...dyes] = what.split(" ");
  const [top = 0, bottom = 1000, aspect = 0.75] = frame.split(" ").map(Number);
  const cloth: Cloth = {
    weave: weave as Weave,
    print: print as Print,
    dyes: dyes.map((word) => dyeOf(word)),
  };
  return {
    kind,
    cut: cut as Cut,
    cloth: finish ? ({ ...cloth, finish } as FinishedCloth) : cloth,
    word: dyes[0] ?? "",
    finish: finish ? (finish as Finish) : null,
    companions: others
      .split(" ")
      .filter(Boolean)
      .map((worn) => {
        const [name = "", hex = ""] = worn.split(":");
        return { cut: name as Cut | Extra["cut"], hex } as Companion | Extra;
      }),
    rows: [top, bottom],
    aspect,
    setting: setting as Setting,
    style: style as HairStyle,
  };
}

/** What is under a sheer piece on the trunk: a slip of the same dye, or the piece's lining in a skin colour. */
export function slipUnder({ finish, cloth, cut }: Scene, own: boolean): Layer[] {
  if (finish !== "mesh" && finish !== "lace") return [];
  const plain: Cloth = { weave: "smooth", print: "plain", dyes: own ? [cloth.dyes[0] ?? ""] : ["#d9b79c"] };
  const slip = garmentOf(
    CUTS[cut] === "one-piece" ? "slip-dress" : "camisole",
    plain,
    STANDING[0] ?? round(STANDING, 0),
  );
  return [...(slip.below ?? []), ...(slip.trunk ?? [])].map((layer) =>
    "draw" in layer ? layer : { ...layer, product: own },
  );
}

/** What is no garment: a graphic on the piece, a bag across it. */
export const extrasOf = ({ companions }: Scene, random: () => number): Layer[] =>
  companions.flatMap(({ cut, hex }) =>
    cut === "graphic" ? [graphic(hex, random)] : cut === "crossbody" ? crossbody(hex) : [],
  );

/** A scene with everything in its place but the person. */
function stage(scene: Scene, number: number): Omit<Shot, "tone" | "hair"> {
  const seed = `${scene.kind}-${number}`;
  const random = randomFrom(seedOf(seed));
  const several = scene.kind === "several-views";
  const lining = slipUnder(scene, number % 2 === 0);
  const clothes = scene.companions.filter((worn): worn is Companion => worn.cut in CUTS);
  const figures = (several ? [-0.25, 0.25] : [0.08 * (random() - 0.5)]).map((x, p): Figure => {
    const look = { stance: round(STANDING, number + p), style: scene.style, lining };
    return {
      view: viewOf(scene.rows, scene.aspect * (several ? 2 : 1), { x, y: 0.02 * (random() - 0.5) }),
      layers: [...dressed(scene.cut, scene.cloth, clothes, look, random), ...extrasOf(scene, random)],
    };
  });
  return {
    seed,
    backdrop: SETTINGS[scene.setting](number + 3),
    lamp: lampOf(random, isCutOut(scene.setting)),
    near: 0,
    figures: scene.kind === "stickers" ? [...figures, sticker(number, random)] : figures,
    slot: CUTS[scene.cut],
    text: titleOf(scene.cut, scene.word, number),
  };
}

/** The scenes of the table, in its order. */
export const peopleScenes = (): Scene[] => PEOPLE_TABLE.trim().split("\n").map(readScene);

/** All pictures of people: kind, and how to take them. Of a scene's ten pictures only skin and hair differ. */
export function peopleShots(): (readonly [kind: string, shots: () => Shot[]])[] {
  return peopleScenes().map((scene, number) => [
    scene.kind,
    () => {
      const staged = stage(scene, number);
      return MONK_SKIN.map((skin, t): Shot => {
        const hair = round(HAIRS, 3 * number + t);
        const figures = staged.figures.map(({ view, layers }) => ({
          view,
          layers: asPerson(layers, skin, hair.hex),
        }));
        return { ...staged, figures, tone: t + 1, hair: hair.word };
      });
    },
  ]);
}
