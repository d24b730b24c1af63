import type { Slot } from "../../lib/words/slot.ts";
import { DYES, type Dye } from "./dyes.ts";
import {
  BACKDROPS,
  CUTS,
  type Cut,
  POSES,
  PRINTS,
  type Recipe,
  type Scene,
  WEAVES,
} from "./studio/recipe.ts";

/** A picture of a product. `cors`: whether the image host lets other sites read it. */
export interface Picture extends Recipe {
  readonly cors: boolean;
}

/** One colour that a product comes in; its first picture is the front. */
export interface Variant {
  /** What the shop calls it, as in `Navy, blush, mint`. */
  readonly color: string;
  /** The same, for addresses. */
  readonly slug: string;
  /** Dyes as `#rrggbb`, the ground first. */
  readonly dyes: readonly string[];
  readonly pictures: readonly [Picture, ...Picture[]];
}

/** A product on sale; its first variant is the one on the tile. Prices in pounds. */
export interface Product {
  readonly id: string;
  readonly title: string;
  readonly slot: Slot;
  readonly cut: Cut;
  readonly price: number;
  /** The price before the sale, where there is one. */
  readonly was: number | null;
  readonly currency: "GBP";
  readonly variants: readonly [Variant, ...Variant[]];
}

/** One word out of a list, or an error that names the line. */
function oneOf<const T extends string>(words: readonly T[], word: string | undefined, line: string): T {
  const found = words.find((known) => known === word);
  if (!found) throw new Error(`"${word}" is not one of ${words.join(", ")}, in: ${line}`);
  return found;
}

const DYE_NAMES = Object.keys(DYES) as Dye[];
const CUT_NAMES = Object.keys(CUTS) as Cut[];

/** `Marla wrap dress, cobalt` → `marla-wrap-dress-cobalt`. */
export const slugOf = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const listOf = (text: string): string[] => text.split(",").flatMap((part) => part.trim() || []);

function readScene(text: string, line: string): Scene {
  const [pose, backdrop, skin] = text.split(" ");
  return {
    pose: oneOf(POSES, pose, line),
    backdrop: oneOf(BACKDROPS, backdrop, line),
    skin: skin ? Number(skin) : null,
  };
}

/** One line of the table. `index` decides which host folder its pictures are in: every third is closed to other sites. */
function readProduct(line: string, index: number): Product {
  const cells = line.split("|").map((cell) => cell.trim());
  const [title = "", cutName, made = "", ground = "", prices = "", scene = "", colors = "", scenes = ""] =
    cells;
  const cut = oneOf(CUT_NAMES, cutName, line);
  const [weaveName, printName] = made.split(" ");
  const [weave, print] = [oneOf(WEAVES, weaveName, line), oneOf(PRINTS, printName, line)];
  const [first, last] = prices.split(" ").map(Number);
  const id = slugOf(title);
  const front = readScene(scene, line);
  const others = listOf(scenes).map((text) => readScene(text, line));

  const variantOf = (names: string, shown: readonly Scene[]): Variant => {
    const words = names.split(" ");
    const dyes = words.map((name) => DYES[oneOf(DYE_NAMES, name, line)]);
    const slug = words.join("-");
    const pictureOf = (shot: Scene, number: number): Picture => ({
      id: `${id}--${slug}-${number + 1}`,
      cut,
      cloth: { weave, print, dyes },
      scene: shot,
      cors: index % 3 !== 2,
    });
    return {
      color: capital(words.join(", ")),
      slug,
      dyes,
      pictures: [pictureOf(front, 0), ...shown.map((s, i) => pictureOf(s, i + 1))],
    };
  };

  return {
    id,
    title,
    slot: CUTS[cut],
    cut,
    price: last ?? first ?? Number.NaN,
    was: last === undefined ? null : (first ?? null),
    currency: "GBP",
    variants: [variantOf(ground, others), ...listOf(colors).map((color) => variantOf(color, []))],
  };
}

/** Reads the whole table. Throws on any word that the studio or the dye book does not know. */
export const readCatalogue = (table: string): readonly Product[] => table.trim().split("\n").map(readProduct);
