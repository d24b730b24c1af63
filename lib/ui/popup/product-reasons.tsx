import "./product-reasons.css";
import type { Duplicate, LookFit } from "../../fit/verdict.ts";
import type { ExplainedVerdict, NamedSwatch, SummaryProduct } from "../../link/messages.ts";
import { countOf, RELATION_WORDS, schemeText } from "../words.ts";
import { FitRows } from "./fit-rows.tsx";
import { capital, groupFits } from "./group-fits.ts";
import { PieceLine } from "./piece-line.tsx";

type Pieces = ExplainedVerdict["pieces"];

/** Why a product got its headline: what it repeats, the owned pieces it goes with by relation, and looks. */
export function ProductReasons({
  product,
  explained,
  swatches,
}: {
  product: SummaryProduct;
  explained: ExplainedVerdict | undefined;
  swatches: readonly NamedSwatch[];
}) {
  if (!explained) return <p class="soft">Not compared with your closet yet.</p>;
  const { verdict, pieces } = explained;
  const groups = groupFits(verdict.pieces);
  return (
    <>
      {verdict.caution !== null && <p>{verdict.caution}</p>}
      {verdict.duplicates.length > 0 && <Repeats duplicates={verdict.duplicates} pieces={pieces} />}
      {groups.map(({ relation, fits }) => (
        <section key={relation}>
          <h3>
            {capital(RELATION_WORDS[relation])} <span class="soft">{countOf(fits.length, "piece")}</span>
          </h3>
          <FitRows fits={fits} pieces={pieces} swatches={swatches} />
        </section>
      ))}
      {verdict.lookExamples.length > 0 && (
        <Looks total={verdict.looks} looks={verdict.lookExamples} pieces={pieces} />
      )}
      {groups.length === 0 && verdict.duplicates.length === 0 && (
        <p class="soft">No piece of yours stands in a named relation to it.</p>
      )}
      {product.link !== null && (
        <p>
          <a class="page-link" href={product.link} target="_blank" rel="noreferrer">
            Open its page
          </a>
        </p>
      )}
    </>
  );
}

function Repeats({ duplicates, pieces }: { duplicates: readonly Duplicate[]; pieces: Pieces }) {
  return (
    <section>
      <h3>You have this shade already</h3>
      <ul class="pieces">
        {duplicates.map(({ pieceId, samePiece }) => {
          const piece = pieces[pieceId];
          return (
            piece && (
              <PieceLine key={pieceId} piece={piece} note={samePiece ? "this very piece" : undefined} />
            )
          );
        })}
      </ul>
    </section>
  );
}

function Looks({ total, looks, pieces }: { total: number; looks: readonly LookFit[]; pieces: Pieces }) {
  return (
    <section>
      <h3>
        Looks it finishes{" "}
        <span class="soft">{looks.length < total ? `${looks.length} of ${total}` : total}</span>
      </h3>
      <ul class="pieces">
        {looks.map(({ pieceIds, scheme, whole }) => (
          <li key={pieceIds.join(" ")}>
            With {pieceIds.map((id) => pieces[id]?.name ?? "a piece of yours").join(" and ")}{" "}
            <span class="soft">{schemeText(scheme, whole)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
