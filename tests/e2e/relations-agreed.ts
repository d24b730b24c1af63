import { expect } from "vitest";
import type { Piece } from "../../lib/closet/piece.ts";
import type { ExplainedVerdict, PageSummary } from "../../lib/link/messages.ts";
import type { Swatch } from "../../lib/sample/palette.ts";
import { roundedNames, slowColor, slowFigures } from "../color/slow-relation.ts";
import { deltaE, pieceDifference, shownOf, wornWith } from "../fit/slow-comparison.ts";

const colorOf = ({ oklab: [l, a, b] }: Swatch) => slowColor({ mode: "oklab", l, a, b });

/**
 * Compares every verdict with what a slow comparison with culori says of the same palettes: pieces that it repeats,
 * what it may be worn with, colour difference and relation.
 * @returns the relations that occurred
 */
export function relationsAgreed(
  owned: readonly Piece[],
  summary: PageSummary,
  verdicts: readonly ExplainedVerdict[],
): ReadonlySet<string> {
  const kinds = new Set<string>();
  for (const [at, { verdict, pieces }] of verdicts.entries()) {
    const candidate = summary.products[at]?.candidate;
    if (!candidate) throw new Error("a verdict without a product");
    const own = shownOf(candidate.palette.swatches);
    const nameOf = (id: string) => pieces[id]?.name;
    const same = owned.filter(
      ({ slot, swatches }) => slot === candidate.slot && pieceDifference(own, shownOf(swatches)) <= 6,
    );
    const said = verdict.duplicates.map(({ pieceId }) => nameOf(pieceId));
    expect([...said].sort(), candidate.title).toEqual(same.map(({ name }) => name).sort());
    for (const fit of verdict.pieces) {
      const piece = owned.find(({ name }) => name === nameOf(fit.pieceId));
      const [one, other] = [candidate.palette.swatches[fit.pair[0]], piece?.swatches[fit.pair[1]]];
      if (!piece || !one || !other) throw new Error(`${candidate.title} names a piece that is not owned`);
      expect(wornWith(candidate.slot, piece.slot), `${candidate.title} with ${piece.name}`).toBe(true);
      expect(fit.deltaE2000).toBeCloseTo(deltaE(one, other), 3);
      const names = roundedNames(slowFigures(colorOf(one), colorOf(other), candidate.palette.confidence));
      expect([...names], candidate.title).toContain([fit.relation, ...fit.alternatives].join());
      kinds.add(fit.relation);
    }
  }
  return kinds;
}
