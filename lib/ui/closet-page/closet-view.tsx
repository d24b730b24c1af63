import "./closet-view.css";
import { useCallback, useMemo, useRef, useState } from "preact/hooks";
import type { Piece } from "../../closet/piece.ts";
import type { Vision } from "../../color/color-vision.ts";
import { SLOTS, type Slot } from "../../words/slot.ts";
import { countOf, SLOT_WORDS } from "../words.ts";
import { arrange, hangPieces, type Sort } from "./hung-piece.ts";
import { kinOf } from "./kin.ts";
import { KinPanel } from "./kin-panel.tsx";
import { PieceCard } from "./piece-card.tsx";
import { createSpotlight, SpotlightContext } from "./spotlight.ts";
import { WheelChart } from "./wheel-chart.tsx";

export interface ClosetViewProps {
  readonly pieces: readonly Piece[];
  /** How the person says they see colours; null for as most people do. */
  readonly vision: Vision | null;
  readonly onEdit: (piece: Piece) => void;
  readonly onRemove: (piece: Piece) => void;
}

/** The closet as cards and as dots on the wheel; what is chosen in one is marked in the other. */
export function ClosetView({ pieces, vision, onEdit, onRemove }: ClosetViewProps) {
  const [slot, setSlot] = useState<Slot | null>(null);
  const [sort, setSort] = useState<Sort>("hue");
  const [selectedId, setSelectedId] = useState<string | null>(null);
  const [light] = useState(createSpotlight);
  const all = useMemo(() => hangPieces(pieces), [pieces]);
  const chosenSlot = slot !== null && pieces.some((piece) => piece.slot === slot) ? slot : null;
  const hung = useMemo(() => arrange(all, chosenSlot, sort), [all, chosenSlot, sort]);
  const selected = all.find(({ piece }) => piece.id === selectedId) ?? null;
  const groups = useMemo(() => (selected ? kinOf(selected, all, vision) : []), [selected, all, vision]);
  const kin = useMemo(
    () => selected && new Map(groups.flatMap((group) => group.kin.map((one) => [one.hung.piece.id, one]))),
    [selected, groups],
  );
  const select = useCallback((id: string) => setSelectedId((before) => (before === id ? null : id)), []);
  const wheel = useRef<HTMLDivElement>(null);
  const selectNone = () => {
    // The panel goes with the button pressed in it; the dot on the wheel stays, unless the filter leaves it out.
    const drawing = wheel.current?.querySelector<HTMLElement>(".wheel-drawing");
    (drawing?.querySelector<HTMLElement>("[aria-pressed='true']") ?? drawing)?.focus();
    setSelectedId(null);
  };
  return (
    <SpotlightContext.Provider value={light}>
      <div class="closet-view">
        <div class="closet-wheel" ref={wheel}>
          <WheelChart hung={hung} selected={selected} kin={kin} onSelect={select} />
          {selected && (
            <KinPanel selected={selected} groups={groups} onSelect={select} onSelectNone={selectNone} />
          )}
        </div>
        <section class="closet-pieces" aria-labelledby="pieces-title">
          <div class="closet-bar">
            <h2 id="pieces-title">{countOf(hung.length, "piece")}</h2>
            <label class="closet-sort">
              <span>Sort by</span>
              <select
                class="field"
                value={sort}
                onChange={(event) => setSort(event.currentTarget.value === "newest" ? "newest" : "hue")}
              >
                <option value="hue">Hue</option>
                <option value="newest">Newest</option>
              </select>
            </label>
          </div>
          <SlotFilter pieces={pieces} slot={chosenSlot} onSlot={setSlot} />
          <ul class="piece-grid">
            {hung.map((one) => (
              <PieceCard
                key={one.piece.id}
                hung={one}
                selected={one.piece.id === selectedId}
                onSelect={select}
                onEdit={onEdit}
                onRemove={onRemove}
              />
            ))}
          </ul>
        </section>
      </div>
    </SpotlightContext.Provider>
  );
}

function SlotFilter({
  pieces,
  slot,
  onSlot,
}: {
  pieces: readonly Piece[];
  slot: Slot | null;
  onSlot: (slot: Slot | null) => void;
}) {
  const counts = new Map<Slot, number>();
  for (const piece of pieces) counts.set(piece.slot, (counts.get(piece.slot) ?? 0) + 1);
  const choices = [null, ...SLOTS.filter((one) => counts.has(one))];
  return (
    <fieldset class="slot-filter">
      <legend class="unseen">Show pieces worn as</legend>
      {choices.map((one) => (
        <label key={one ?? "all"} class="slot-choice">
          <input
            type="radio"
            class="unseen"
            name="slot-filter"
            checked={slot === one}
            onChange={() => onSlot(one)}
          />
          <span>
            {one === null ? "All" : SLOT_WORDS[one]}{" "}
            <span class="soft small">{one === null ? pieces.length : counts.get(one)}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
