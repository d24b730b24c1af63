import { describe, expect, it } from "vitest";
import { readSlot } from "../../lib/words/read-words.ts";

/** Titles as stores write them, with the slot a person would name. Common knowledge of the trade, no source. */
const TITLES: readonly (readonly [title: string, slot: string | null])[] = [
  // The head noun decides.
  ["Dress shirt", "top"],
  ["Linen shirt dress", "one-piece"],
  ["Skirt suit in tweed", "one-piece"],
  ["Jean jacket", "layer"],
  ["Sweater vest", "layer"],
  ["Peter Pan collar blouse", "top"],
  ["High-top sneakers", "shoes"],
  ["Sock boots", "shoes"],
  ["Bikini top", "top"],
  ["Denim handbag", "bag"],
  ["Belt bag", "bag"],
  ["Pull-on pants", "bottom"],
  ["Wool hat", "headwear"],
  ["Opaque tights 60 denier", "legwear"],
  ["Beaded necklace", "jewellery"],
  ["Silk scarf", "accessory"],
  ["Leather belt", "accessory"],
  ["Canvas sneakers", "shoes"],
  // What follows a small word does not name the thing.
  ["Midi dress with belt", "one-piece"],
  ["Shirt in a bag print", "top"],
  ["Rock mit Gürtel", "bottom"],
  ["Robe avec ceinture", "one-piece"],
  // Brands, stores and colours behind or before a mark.
  ["Tallow & Finch | Wool coat", "layer"],
  ["Wool coat – Tallow & Finch Shoes", "layer"],
  ["T-shirt, navy", "top"],
  // Compounds.
  ["Plisseerock aus Satin", "bottom"],
  ["Sommerkleid", "one-piece"],
  ["Hosenanzug", "one-piece"],
  ["Rollkragenpullover", "top"],
  ["Feinstrumpfhose", "legwear"],
  ["Lederhandschuhe", "accessory"],
  ["Winterjas dames", "layer"],
  ["Spijkerbroek", "bottom"],
  ["Ullrock svart", "layer"],
  ["Stickad tröja", "top"],
  ["Sommarklänning", "one-piece"],
  ["Sweatshirt", "top"],
  ["Raincoat", "layer"],
  // Noun first.
  ["Robe chemise en coton", "one-piece"],
  ["Robe longue noire", "one-piece"],
  ["Sac à main en cuir", "bag"],
  ["Pantalón cintura alta", "bottom"],
  ["Vestido camisero", "one-piece"],
  ["Bolso de mano", "bag"],
  ["Gonna pantalone nera", "bottom"],
  ["Borsa a tracolla", "bag"],
  ["Saia midi plissada", "bottom"],
  ["Spódnica plisowana czarna", "bottom"],
  ["Sukienka koszulowa", "one-piece"],
  // Plurals, cases, capitals, accents.
  ["SKIRTS", "bottom"],
  ["Dresses", "one-piece"],
  ["Mützen", "headwear"],
  ["chapeaux", "headwear"],
  ["Zapatillas blancas", "shoes"],
  ["Butów", null],
  ["Torebki", "bag"],
  // No spaces between words.
  ["シャツワンピース", "one-piece"],
  ["デニムジャケット", "layer"],
  ["ニット帽", "headwear"],
  ["靴下", "legwear"],
  ["黒いスカート", "bottom"],
  // Words inside other words are no words.
  ["What we wear", null],
  ["Spring stories", null],
  ["Baggy", null],
  ["Topaz", null],
  ["", null],
];

describe("readSlot", () => {
  it.each(TITLES)("%s: %s", (title, slot) => {
    expect(readSlot(title)).toBe(slot);
  });

  it("lets the language of the page settle what the words leave open", () => {
    expect(readSlot("Robe", "fr-FR")).toBe("one-piece");
    expect(readSlot("Robe", "en")).toBe("layer");
    expect(readSlot("Rock", "sv")).toBe("layer");
    expect(readSlot("Rock", "de")).toBe("bottom");
  });

  it("reads a title of a million characters as fast as its beginning", () => {
    expect(readSlot(`Wool coat ${"x ".repeat(500_000)}`)).toBe("layer");
  });
});
