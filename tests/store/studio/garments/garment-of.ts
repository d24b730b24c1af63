import type { Stance } from "../body.ts";
import type { Cloth, Cut } from "../recipe.ts";
import type { Garment } from "../stage.ts";
import { saddleBag, tote } from "./bags.ts";
import {
  aLineSkirt,
  jeans,
  pencilSkirt,
  pleatedSkirt,
  shorts,
  straightTrousers,
  wideTrousers,
} from "./bottoms.ts";
import * as dresses from "./dresses.ts";
import { blazer, cardigan, coat, jacket } from "./layers.ts";
import { socks, tights } from "./legwear.ts";
import { ankleBoot, ballerina, courtShoe, trainer } from "./shoes.ts";
import { beads, beanie, belt, beret, scarf } from "./small-things.ts";
import * as tops from "./tops.ts";

const MAKERS: Record<Cut, (cloth: Cloth, stance: Stance) => Garment> = {
  "wrap-dress": dresses.wrapDress,
  "flare-dress": dresses.flareDress,
  "shirt-dress": dresses.shirtDress,
  "slip-dress": dresses.slipDress,
  "maxi-dress": dresses.maxiDress,
  "tee-dress": dresses.teeDress,
  "knit-dress": dresses.knitDress,
  jumpsuit: dresses.jumpsuit,
  tee: tops.tee,
  longsleeve: tops.longsleeve,
  blouse: tops.blouse,
  shirt: tops.shirt,
  jumper: tops.jumper,
  rollneck: tops.rollneck,
  vest: tops.vest,
  camisole: tops.camisole,
  "pleated-skirt": pleatedSkirt,
  "a-line-skirt": aLineSkirt,
  "pencil-skirt": pencilSkirt,
  "wide-trousers": wideTrousers,
  "straight-trousers": straightTrousers,
  jeans,
  shorts,
  coat,
  blazer,
  jacket,
  cardigan,
  tights,
  socks,
  "court-shoe": courtShoe,
  "ankle-boot": ankleBoot,
  trainer,
  ballerina,
  "saddle-bag": saddleBag,
  tote,
  beret,
  beanie,
  beads,
  scarf,
  belt,
};

/** The layers of a garment, cut for somebody who stands so. */
export const garmentOf = (cut: Cut, cloth: Cloth, stance: Stance): Garment => MAKERS[cut](cloth, stance);
