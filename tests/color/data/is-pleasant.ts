/** Words that nobody wants said of their clothes. */
const CRUDE =
  /\b(baby (poo|poop|puke|shit)|barf|bile|blood|bland|booger|boring|bruise|diarrhea|dirt|dirty|drab|gross|hospital|icky|mud|muddy|murky|nasty|piss|poison|poo|poop|puke|putty|radioactive|shit|sick|sickly|slime|snot|swamp|toxic|ugly|vomit|weird|algae)\b/;

/** Words that are slips, doubles, whims, or somebody's name or trade mark. */
const ODD =
  /(\/|\b(azul|barbie|barney|battleship|blurple|burple|blue blue|bluish|bluegreen|bluegrey|bluey|browny|brownish|british|camo|camouflage|carolina|clear|creme|darkblue|darkgreen|darkish|desert|dodger|dusk|dust|easter|egg shell|fluro|flat|foam|forrest|frog|golden rod|grassy|greenblue|greeny|hint|highlighter|hot green|indian|irish|kelley|kermit|lavendar|leafy|leather|lichen|lighter|lightblue|lightgreen|lightish|light light|liliac|lipstick|macaroni|manilla|metallic|minty|mossy|nice|ocher|ocre|off blue|off green|off yellow|orangeish|orangered|orangey|orangish|pale light|perrywinkle|pig|pinky|primary|pure|purpleish|purpley|purply|purplish|pinkish|really|reddish|reddy|rosa|rusty|sea|seaweed|sandy|siena|spearmint|sun|terra cotta|terracota|tealish|tiffany|topaz|toupe|true|turtle|twilight|urple|velvet|water|washed|windows|yellowgreen|yellowish|yellowy|greenish|greyish|tree|strong|cool|dark pastel|light pastel|light bright|bright light|light neon|off white|almost black)\b|^(adobe|asparagus|berry|bluish|cement|dark|dusky|earth|grapefruit|ice|kiwi|pale|pea|pea soup|pea soup green|royal|ocean|petrol|rouge|squash|pear|golden|marine|midnight|hazel|heather|clay|barney|puce|drab|butter|pine|spruce|tomato|watermelon|tea|steel|leaf|grass|straw|burnt yellow|burnt red|red wine|clay brown|yellow tan|sand yellow|dark cream|greyblue|night blue|stormy blue|warm purple|warm blue|rich purple|hot purple|baby purple|baby green|green apple|candy pink|grape purple|plum purple|eggplant purple|mid green|mid blue|neon red|vibrant purple|vibrant green|vibrant blue|tan green|tan brown|sap green|navy green|aqua marine|robin egg blue|bubble gum pink|pastel red|pale red|light red|custard|strawberry|electric lime)$)/;

/** Compounds that would let two pale or dark words contradict each other. */
const CONTRADICTORY =
  /\b(light|pale) (burgundy|maroon|navy|navy blue|eggplant|indigo|royal blue|forest green|mustard|plum|lime green|teal)\b/;

/** Metals, which no colour alone can tell. */
const METALLIC = /\b(gold|silver|copper|bronze|gunmetal)\b/;

/** Whether a survey name reads well as the name of a garment's colour. */
export function isPleasant(name: string): boolean {
  const plain = name.toLowerCase();
  return !CRUDE.test(plain) && !ODD.test(plain) && !CONTRADICTORY.test(plain) && !METALLIC.test(plain);
}

/** The basic hue words that may stand side by side in one name. */
const SAID_TOGETHER = new Set([
  "blue green",
  "blue grey",
  "grey blue",
  "grey green",
  "grey brown",
  "orange red",
  "red brown",
  "red orange",
  "yellow green",
  "yellow orange",
]);

const BASIC = /\b(red|orange|yellow|green|blue|purple|violet|pink|brown|grey|black|white)\b/g;

/** Whether a name says two hues that people do not say together ("pink purple"). */
export function isMuddled(name: string): boolean {
  const hues = name.match(BASIC) ?? [];
  return hues.length > 1 && !SAID_TOGETHER.has(hues.join(" "));
}
