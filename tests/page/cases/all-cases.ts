import { AMOUNTS_AND_COUNTRIES } from "./amounts-and-countries.ts";
import { ANNOUNCED_BESIDE } from "./announced-beside.ts";
import { BESIDE_THE_NAME } from "./beside-the-name.ts";
import { BLOCKS_UNDER_A_NAME } from "./blocks-under-a-name.ts";
import { FLAGS_AND_COLUMNS } from "./flags-and-columns.ts";
import { FOLDERS_AND_SIGNS } from "./folders-and-signs.ts";
import { FRAMES_AND_MAKERS } from "./frames-and-makers.ts";
import { IN_PIECES } from "./in-pieces.ts";
import { LAYERS_AND_SPANS } from "./layers-and-spans.ts";
import { LEFT_UNSAID } from "./left-unsaid.ts";
import { LINES_AND_LABELS } from "./lines-and-labels.ts";
import { LISTS_BY_HAND } from "./lists-by-hand.ts";
import { LOOK_ALIKE_CASES } from "./look-alikes.ts";
import { MAIN_CASES } from "./main-products.ts";
import { MARKS_AND_CARDS } from "./marks-and-cards.ts";
import { NAMES_AMONG_BADGES } from "./names-among-badges.ts";
import { NAMES_AND_SIGNS } from "./names-and-signs.ts";
import { NAMES_OF_PAGES } from "./names-of-pages.ts";
import { NAMES_THAT_STAND_OUT } from "./names-that-stand-out.ts";
import { OFFERS_OF_NO_WARES } from "./offers-of-no-wares.ts";
import type { PageCase } from "./page-case.ts";
import { PAGES_OF_SERVICES } from "./pages-of-services.ts";
import { PAGES_WITHOUT_PRODUCTS } from "./pages-without-products.ts";
import { PAID_IN_PARTS } from "./paid-in-parts.ts";
import { PARTS_APART } from "./parts-apart.ts";
import { PICTURE_CASES } from "./pictures.ts";
import { PICTURES_TO_COME } from "./pictures-to-come.ts";
import { PRICES_NEAR_BY } from "./prices-near-by.ts";
import { PRODUCT_PAGES_BY_HAND } from "./product-pages-by-hand.ts";
import { SERVICES_AND_FEES } from "./services-and-fees.ts";
import { SHELVES } from "./shelves.ts";
import { SHOPS_ABROAD } from "./shops-abroad.ts";
import { SHOPS_BY_BEGINNERS } from "./shops-by-beginners.ts";
import { SHOPS_BY_KIT } from "./shops-by-kit.ts";
import { SHOPS_BY_MANY_HANDS } from "./shops-by-many-hands.ts";
import { SHOPS_BY_OTHER_SIGNS } from "./shops-by-other-signs.ts";
import { SHOPS_FROM_EVERYWHERE } from "./shops-from-everywhere.ts";
import { SHOPS_FROM_TEMPLATES } from "./shops-from-templates.ts";
import { SHOPS_HOME_MADE } from "./shops-home-made.ts";
import { SHOPS_IN_OTHER_WORDS } from "./shops-in-other-words.ts";
import { SHOPS_MET_LATE } from "./shops-met-late.ts";
import { SHOPS_UNLIKE_ANY } from "./shops-unlike-any.ts";
import { SHOPS_WITHOUT_PRICES } from "./shops-without-prices.ts";
import { SIGNS_AND_STAMPS } from "./signs-and-stamps.ts";
import { SIGNS_BEHIND_LABELS } from "./signs-behind-labels.ts";
import { STANDING_ELSEWHERE } from "./standing-elsewhere.ts";
import { TAKEN_ALREADY } from "./taken-already.ts";
import { TILE_CASES } from "./tiles.ts";
import { TILES_BY_WHAT_THEY_SAY } from "./tiles-by-what-they-say.ts";
import { TOLD_ASIDE } from "./told-aside.ts";
import { TOLD_BY_ADDRESSES } from "./told-by-addresses.ts";
import { TOLD_BY_LITTLE } from "./told-by-little.ts";
import { WHOLE_PAGES } from "./whole-pages.ts";
import { WITHOUT_A_SIGN } from "./without-a-sign.ts";
import { WORDS_AND_NUMBERS } from "./words-and-numbers.ts";

/** Every invented page, by what it is about. */
export const ALL_CASES: readonly (readonly [subject: string, cases: readonly PageCase[]])[] = [
  ["tiles", TILE_CASES],
  ["pictures", PICTURE_CASES],
  ["look-alikes", LOOK_ALIKE_CASES],
  ["main products", MAIN_CASES],
  ["whole pages", WHOLE_PAGES],
  ["shops abroad", SHOPS_ABROAD],
  ["home-made shops", SHOPS_HOME_MADE],
  ["shops by kit", SHOPS_BY_KIT],
  ["shops by many hands", SHOPS_BY_MANY_HANDS],
  ["shops in other words", SHOPS_IN_OTHER_WORDS],
  ["shops from everywhere", SHOPS_FROM_EVERYWHERE],
  ["shops by other signs", SHOPS_BY_OTHER_SIGNS],
  ["product pages by hand", PRODUCT_PAGES_BY_HAND],
  ["what is announced beside a product", ANNOUNCED_BESIDE],
  ["shops from templates", SHOPS_FROM_TEMPLATES],
  ["shops by beginners", SHOPS_BY_BEGINNERS],
  ["shelves", SHELVES],
  ["shops unlike any", SHOPS_UNLIKE_ANY],
  ["shops met late", SHOPS_MET_LATE],
  ["shops without prices", SHOPS_WITHOUT_PRICES],
  ["prices near by", PRICES_NEAR_BY],
  ["tiles by what they say", TILES_BY_WHAT_THEY_SAY],
  ["pages without products", PAGES_WITHOUT_PRODUCTS],
  ["what is taken already", TAKEN_ALREADY],
  ["pages of services", PAGES_OF_SERVICES],
  ["blocks under a name", BLOCKS_UNDER_A_NAME],
  ["what is paid in parts", PAID_IN_PARTS],
  ["pictures to come", PICTURES_TO_COME],
  ["names among badges", NAMES_AMONG_BADGES],
  ["names and signs", NAMES_AND_SIGNS],
  ["what little tells", TOLD_BY_LITTLE],
  ["what stands elsewhere", STANDING_ELSEWHERE],
  ["flags and columns", FLAGS_AND_COLUMNS],
  ["lines and labels", LINES_AND_LABELS],
  ["parts that stand apart", PARTS_APART],
  ["what is told aside", TOLD_ASIDE],
  ["services and fees", SERVICES_AND_FEES],
  ["layers and spans", LAYERS_AND_SPANS],
  ["beside the name", BESIDE_THE_NAME],
  ["told by addresses", TOLD_BY_ADDRESSES],
  ["what is left unsaid", LEFT_UNSAID],
  ["amounts without a sign", WITHOUT_A_SIGN],
  ["names that stand out", NAMES_THAT_STAND_OUT],
  ["lines in pieces", IN_PIECES],
  ["names of pages", NAMES_OF_PAGES],
  ["signs and stamps", SIGNS_AND_STAMPS],
  ["frames and makers", FRAMES_AND_MAKERS],
  ["words and numbers", WORDS_AND_NUMBERS],
  ["offers of no wares", OFFERS_OF_NO_WARES],
  ["amounts and countries", AMOUNTS_AND_COUNTRIES],
  ["lists by hand", LISTS_BY_HAND],
  ["signs behind labels", SIGNS_BEHIND_LABELS],
  ["folders and signs", FOLDERS_AND_SIGNS],
  ["marks and cards", MARKS_AND_CARDS],
];
