import { SLOTS, type Slot } from "../../words/slot.ts";
import { SLOT_WORDS } from "../words.ts";

/** Where a piece is worn; null while nothing is chosen. */
export function SlotSelect({
  value,
  label = "Worn as",
  onChange,
}: {
  value: Slot | null;
  label?: string;
  onChange: (slot: Slot) => void;
}) {
  return (
    <label class="labelled">
      {label}
      <select
        class="field"
        required
        value={value ?? ""}
        onChange={(event) => {
          const chosen = SLOTS.find((slot) => slot === event.currentTarget.value);
          if (chosen) onChange(chosen);
        }}
      >
        {value === null && <option value="">Choose</option>}
        {SLOTS.map((slot) => (
          <option key={slot} value={slot}>
            {SLOT_WORDS[slot]}
          </option>
        ))}
      </select>
    </label>
  );
}
