import "./quick-start.css";
import { useState } from "preact/hooks";
import { CLOTH_COLORS, type ClothColor } from "../../closet/cloth-colors.ts";
import type { Piece } from "../../closet/piece.ts";
import { QUICK_PIECES, type QuickPiece, quickName, quickPiece } from "../../closet/quick-start.ts";
import { SLOTS } from "../../words/slot.ts";
import { Button } from "../button.tsx";
import { Cloth } from "../cloth.tsx";
import { countOf, SLOT_WORDS } from "../words.ts";
import { ColourRadios } from "./colour-radios.tsx";

/** The colour chosen for a ticked piece, by its place in `QUICK_PIECES`. */
type Ticked = ReadonlyMap<number, ClothColor>;

const COLOURS = namesOf(CLOTH_COLORS).map((name) => ({ key: name, name, oklab: CLOTH_COLORS[name] }));

/** The first minutes: tick what hangs in most closets, change the colours, and the badges have something to compare. */
export function QuickStart({
  now,
  onKeep,
}: {
  now: () => number;
  onKeep: (pieces: readonly Piece[]) => void;
}) {
  const [ticked, setTicked] = useState<Ticked>(new Map());
  const keep = () => {
    const pieces = [...ticked].flatMap(([at, color]) => {
      const quick = QUICK_PIECES[at];
      return quick ? [quickPiece(quick, now(), color)] : [];
    });
    onKeep([...new Map(pieces.map((piece) => [piece.id, piece])).values()]);
  };
  return (
    <div>
      <div class="quick-slots">
        {SLOTS.map((slot) => {
          const rows = QUICK_PIECES.flatMap((quick, at) => (quick.slot === slot ? [{ quick, at }] : []));
          if (rows.length === 0) return null;
          return (
            <fieldset key={slot} class="quick-slot">
              <legend>{SLOT_WORDS[slot]}</legend>
              {rows.map(({ quick, at }) => (
                <QuickRow
                  key={at}
                  quick={quick}
                  color={ticked.get(at) ?? null}
                  onColor={(color) => setTicked((before) => withTick(before, at, color))}
                />
              ))}
            </fieldset>
          );
        })}
      </div>
      <div class="quick-foot">
        <Button kind="strong" disabled={ticked.size === 0} onClick={keep}>
          {ticked.size === 0 ? "Tick what you own" : `Put ${countOf(ticked.size, "piece")} in the closet`}
        </Button>
      </div>
    </div>
  );
}

function QuickRow({
  quick,
  color,
  onColor,
}: {
  quick: QuickPiece;
  /** Null while it is not ticked. */
  color: ClothColor | null;
  onColor: (color: ClothColor | null) => void;
}) {
  const [open, setOpen] = useState(false);
  const shown = color ?? quick.color;
  const name = quickName(quick, shown);
  const { swatches } = quickPiece(quick, 0, shown);
  return (
    <div class="quick-row">
      <label class="quick-tick">
        <input
          type="checkbox"
          checked={color !== null}
          onChange={(event) => onColor(event.currentTarget.checked ? shown : null)}
        />
        <Cloth swatches={swatches} size="patch" />
        <span>{name}</span>
      </label>
      {color !== null && (
        <Button
          kind="quiet"
          aria-expanded={open}
          aria-label={`${open ? "Done with the colour of" : "Recolour"} ${name}`}
          onClick={() => setOpen(!open)}
        >
          {open ? "Done" : "Recolour"}
        </Button>
      )}
      {color !== null && open && (
        <div class="quick-colours">
          <ColourRadios
            legend={`Colour: ${shown}`}
            choices={COLOURS}
            chosen={shown}
            onChoose={(choice) => onColor(COLOURS.find(({ key }) => key === choice.key)?.key ?? shown)}
          />
        </div>
      )}
    </div>
  );
}

function withTick(ticked: Ticked, at: number, color: ClothColor | null): Ticked {
  const next = new Map(ticked);
  if (color === null) next.delete(at);
  else next.set(at, color);
  return next;
}

/** The keys of a constant table as their own type. */
function namesOf<Name extends string>(table: Readonly<Record<Name, unknown>>): readonly Name[] {
  return Object.keys(table).filter((name): name is Name => name in table);
}
