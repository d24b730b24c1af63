import "./kin-panel.css";
import { useContext, useEffect, useRef, useState } from "preact/hooks";
import { Button } from "../button.tsx";
import { Cloth, NamedCloth } from "../cloth.tsx";
import { RelationDial } from "../dial.tsx";
import { countOf, LOOK_ALIKE, RELATION_WORDS } from "../words.ts";
import type { HungPiece } from "./hung-piece.ts";
import type { Kin, KinGroup } from "./kin.ts";
import { SpotlightContext } from "./spotlight.ts";

/** Pieces of one relation shown before "Show all". */
const SHOWN_AT_FIRST = 4;

export interface KinPanelProps {
  readonly selected: HungPiece;
  readonly groups: readonly KinGroup[];
  readonly onSelect: (id: string) => void;
  readonly onSelectNone: () => void;
}

/** Which owned pieces stand where on the wheel, seen from the selected one. */
export function KinPanel({ selected, groups, onSelect, onSelectNone }: KinPanelProps) {
  const panel = useRef<HTMLElement>(null);
  const [statement] = selected.named;
  useEffect(() => {
    // A piece chosen here leaves the list, and its button takes the focus with it.
    if (document.activeElement === document.body) panel.current?.focus({ preventScroll: true });
  }, [selected.piece.id]);
  return (
    <section class="kin" id="goes-with" tabIndex={-1} aria-labelledby="goes-with-title" ref={panel}>
      <div class="kin-head">
        <h2 id="goes-with-title">What goes with {selected.piece.name}</h2>
        <NamedCloth swatches={selected.named} />
        {statement && selected.named.length > 1 && (
          <p class="soft small">
            Only its {statement.name} is compared, with the first colour of each other piece.
          </p>
        )}
        <Button kind="quiet" onClick={onSelectNone}>
          Choose none
        </Button>
      </div>
      {groups.map((group) => (
        <KinGroupView key={group.relation} group={group} selected={selected} onSelect={onSelect} />
      ))}
      {groups.length === 0 && <p class="soft">Nothing else hangs here yet. Add a second piece to compare.</p>}
    </section>
  );
}

function KinGroupView({
  group,
  selected,
  onSelect,
}: {
  group: KinGroup;
  selected: HungPiece;
  onSelect: (id: string) => void;
}) {
  const [open, setOpen] = useState(false);
  const { kin, relation, hint } = group;
  const first = kin[0];
  const shown = open ? kin : kin.slice(0, SHOWN_AT_FIRST);
  return (
    <section class="kin-group">
      <h3 class="kin-title">
        {first ? (
          <RelationDial
            first={selected.point.oklab}
            second={first.hung.point.oklab}
            relation={relation}
            alternatives={[]}
          />
        ) : (
          RELATION_WORDS[relation]
        )}
        <span class="kin-count soft small">
          {kin.length > 0 ? countOf(kin.length, "piece") : `nothing yet; look near ${hint}`}
        </span>
      </h3>
      {kin.length > 0 && (
        <ul class="kin-list">
          {shown.map((one) => (
            <KinRow key={one.hung.piece.id} kin={one} onSelect={onSelect} />
          ))}
        </ul>
      )}
      {kin.length > SHOWN_AT_FIRST && (
        <Button kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? "Show fewer" : `Show all ${kin.length} ${RELATION_WORDS[relation]}`}
        </Button>
      )}
    </section>
  );
}

function KinRow({ kin, onSelect }: { kin: Kin; onSelect: (id: string) => void }) {
  const { piece, named } = kin.hung;
  const nearest = kin.alternatives.find((name) => name !== "none");
  const light = useContext(SpotlightContext);
  return (
    <li>
      <button
        type="button"
        class="kin-row"
        onClick={() => onSelect(piece.id)}
        onPointerEnter={() => light.shine(piece.id)}
        onPointerLeave={() => light.shine(null)}
        onFocus={() => light.shine(piece.id)}
        onBlur={() => light.shine(null)}
      >
        <Cloth swatches={named} size="chip" />
        <span>
          {piece.name}
          {nearest && <span class="kin-note soft small">or {RELATION_WORDS[nearest]}</span>}
          {kin.lookAlike && <span class="kin-note small">{LOOK_ALIKE}</span>}
        </span>
      </button>
    </li>
  );
}
