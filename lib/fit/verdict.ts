import type { Relation } from "../color/relation-name.ts";
import type { SchemeName } from "../color/scheme-name.ts";
import type { Palette } from "../sample/palette.ts";
import type { Slot } from "../words/slot.ts";

/** A product as the comparison needs it. */
export interface Candidate {
  readonly key: string;
  readonly title: string;
  readonly slot: Slot | null;
  readonly palette: Palette;
}

/** A piece of the same slot in the same shade. */
export interface Duplicate {
  readonly pieceId: string;
  readonly deltaE2000: number;
  /** True when the product itself was recorded as owned: then it is no guess from colour. */
  readonly samePiece: boolean;
}

/** An owned piece that a product goes with. */
export interface PieceFit {
  readonly pieceId: string;
  readonly relation: Relation;
  /** Other names within the uncertainty of an edge, likelier first; never holds `relation` itself. */
  readonly alternatives: readonly Relation[];
  readonly deltaE2000: number;
  /** Which swatch of the product and which of the piece are meant: indexes into their swatches. */
  readonly pair: readonly [candidate: number, piece: number];
  /** One plain sentence. */
  readonly why: string;
  /** The pair may look like one shade to this person, though most people tell it apart. */
  readonly lookAlike: boolean;
}

/** A look the product would finish: ids of owned pieces, beside the product itself. */
export interface LookFit {
  readonly pieceIds: readonly string[];
  /** The scheme its colours follow. */
  readonly scheme: SchemeName;
  /** False where the scheme lacks a hue: two of a triad. */
  readonly whole: boolean;
  readonly why: string;
}

/** What a product would do for a closet. */
export interface Verdict {
  /** A few words, for the badge: "You own this red", "A set with your blazer", "Finishes 4 looks". */
  readonly headline: string;
  /** What the headline rests on; the badge and the popup sort by it. */
  readonly kind:
    | "owned"
    | "duplicate"
    | "set"
    | "looks"
    | "goes"
    | "neutral-only"
    | "nothing"
    | "empty-closet"
    | "unreadable";
  /** How many duplicates, sets, looks or pieces the headline speaks of; 0 where there is nothing to count. */
  readonly count: number;
  readonly duplicates: readonly Duplicate[];
  /** Best first; pieces with no named relation are left out. */
  readonly pieces: readonly PieceFit[];
  /** How many looks it makes possible. */
  readonly looks: number;
  /** Some of these looks, best first, at most six. */
  readonly lookExamples: readonly LookFit[];
  /** What the picture cannot know, where it matters for this verdict; null where it does not. */
  readonly caution: string | null;
}
