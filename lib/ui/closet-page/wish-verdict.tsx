import type { LookFit } from "../../fit/verdict.ts";
import type { ExplainedVerdict, NamedSwatch, PieceView } from "../../link/messages.ts";
import { Cloth } from "../cloth.tsx";
import { RelationList } from "../relation-list.tsx";
import { countOf, schemeText } from "../words.ts";

/** Looks written out on a card; the count says how many there are in all. */
const LOOKS_SHOWN = 2;

/** What a product would do for the closet: headline, pieces with their relations, looks, and what the photo leaves open. */
export function WishVerdict({
  explained,
  candidate,
}: {
  explained: ExplainedVerdict;
  candidate: readonly NamedSwatch[];
}) {
  const { verdict, pieces } = explained;
  return (
    <div class="wish-verdict">
      <p class="wish-headline">{verdict.headline}</p>
      {verdict.looks > 0 && (
        <div>
          <h4>{verdict.kind === "looks" ? "Such as" : `Finishes ${countOf(verdict.looks, "look")}`}</h4>
          <ul class="looks">
            {verdict.lookExamples.slice(0, LOOKS_SHOWN).map((look) => (
              <LookRow key={look.pieceIds.join()} look={look} pieces={pieces} />
            ))}
          </ul>
        </div>
      )}
      {verdict.pieces.length > 0 && (
        <div>
          <h4>Goes with {countOf(verdict.pieces.length, "piece")} of yours</h4>
          <RelationList candidate={candidate} fits={verdict.pieces} pieces={pieces} limit={3} />
        </div>
      )}
      {verdict.caution && <p class="soft small">{verdict.caution}</p>}
    </div>
  );
}

function LookRow({ look, pieces }: { look: LookFit; pieces: Readonly<Record<string, PieceView>> }) {
  const worn = look.pieceIds.flatMap((id) => pieces[id] ?? []);
  return (
    <li class="look">
      <span class="look-cloths">
        {worn.map((piece) => (
          <Cloth key={piece.id} swatches={piece.swatches} size="chip" />
        ))}
      </span>
      <span>
        with {new Intl.ListFormat("en-GB").format(worn.map((piece) => piece.name))}{" "}
        <span class="soft small">{schemeText(look.scheme, look.whole)}</span>
      </span>
    </li>
  );
}
