import { useState } from "preact/hooks";
import type { Relation } from "../../color/relation-name.ts";
import type { PieceFit } from "../../fit/verdict.ts";
import type { ExplainedVerdict, NamedSwatch } from "../../link/messages.ts";
import { Button } from "../button.tsx";
import { Dial } from "../dial.tsx";
import { LOOK_ALIKE, RELATION_WORDS } from "../words.ts";
import { PieceLine } from "./piece-line.tsx";

/** Pieces shown of one relation before "Show all". */
const FIRST = 4;

/** The other names within the uncertainty of an edge, said as unsurely as they are. */
const hedge = (alternatives: readonly Relation[]): string | null =>
  alternatives.length > 0 ? `perhaps ${alternatives.map((name) => RELATION_WORDS[name]).join(" or ")}` : null;

/** What to know of one piece beside its relation. */
const noteOn = ({ alternatives, lookAlike }: PieceFit): string | undefined =>
  [hedge(alternatives), lookAlike ? LOOK_ALIKE : null].filter((words) => words !== null).join("; ") ||
  undefined;

/** The owned pieces in one relation: cloth and names, and the dial between the two swatches that are meant. */
export function FitRows({
  fits,
  pieces,
  swatches,
}: {
  fits: readonly PieceFit[];
  pieces: ExplainedVerdict["pieces"];
  swatches: readonly NamedSwatch[];
}) {
  const [all, setAll] = useState(false);
  return (
    <>
      <ul class="pieces">
        {(all ? fits : fits.slice(0, FIRST)).map((fit) => {
          const piece = pieces[fit.pieceId];
          const first = swatches[fit.pair[0]];
          const second = piece?.swatches[fit.pair[1]];
          return (
            piece && (
              <PieceLine
                key={fit.pieceId}
                piece={piece}
                dial={first && second && <Dial first={first.oklab} second={second.oklab} />}
                note={noteOn(fit)}
              />
            )
          );
        })}
      </ul>
      {fits.length > FIRST && (
        <Button kind="quiet" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? "Show fewer" : `Show all ${fits.length}`}
        </Button>
      )}
    </>
  );
}
