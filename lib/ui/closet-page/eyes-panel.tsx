import "./eyes-panel.css";
import { useId } from "preact/hooks";
import { VISIONS, type Vision } from "../../color/color-vision.ts";

/**
 * What a person notices of their own colours: those mixed up most, and whether reds are dark, which tells protan from deutan
 * (common knowledge of the trade, no source).
 */
const NOTICED: Readonly<Record<Vision, string>> = {
  protan: "Reds look dark to me, and I mix them up with greens and browns",
  deutan: "Reds look bright to me, but I mix them up with greens and browns",
  tritan: "I mix up blues with greens, and pinks with oranges",
};

/** Lets a person say once how they see colours. */
export function EyesPanel({
  vision,
  onSay,
}: {
  /** Null: as most people do. */
  vision: Vision | null;
  onSay: (vision: Vision | null) => void;
}) {
  const id = useId();
  return (
    <section class="eyes-panel" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>Your eyes</h2>
      <fieldset aria-describedby={`${id}-note`}>
        <legend>Tell me when two colours look alike to me</legend>
        {[null, ...VISIONS].map((one) => (
          <label key={one ?? "most"} class="eyes-choice">
            <input type="radio" name={`${id}-vision`} checked={one === vision} onChange={() => onSay(one)} />
            <span>
              {one === null ? "No need: I tell colours apart as most people do" : NOTICED[one]}
              {one && <span class="soft"> ({one})</span>}
            </span>
          </label>
        ))}
      </fieldset>
      <p id={`${id}-note`} class="soft small">
        This is no eye test: choose what you were told, or what fits best. Hueward reckons with the full form;
        with a milder one you mix up far fewer colours and are told too often. Your answer stays in this
        browser and does not go into the closet file.
      </p>
    </section>
  );
}
