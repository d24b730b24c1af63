import "./colour-picker.css";
import { useMemo, useState } from "preact/hooks";
import { CLOTH_COLORS } from "../../closet/cloth-colors.ts";
import { colorPoint } from "../../color/color-point.ts";
import type { Oklab } from "../../color/oklab.ts";
import { swatchNames } from "../../color/swatch-name.ts";
import { type ColourChoice, ColourRadios } from "./colour-radios.tsx";
import { FineTuning } from "./fine-tuning.tsx";
import { oklabAt } from "./pure-hue.ts";
import { HUE_CHOICES, nearestHue, SHADE_COLUMNS, shadeCard, strongestAt } from "./shade-card.ts";
import { stepName } from "./wheel-steps.ts";

const CLOTHS: readonly ColourChoice[] = Object.entries(CLOTH_COLORS).map(([name, oklab]) => ({
  key: keyOf(oklab),
  name,
  oklab,
}));

/** Lightness and chroma at which a hue is offered: a middling cloth that every hue can have. */
const HUE_FACE = { lightness: 0.64, chroma: 0.13 } as const;
const NO_HUE = "grey";

const HUES: readonly ColourChoice[] = [
  ...HUE_CHOICES.map((angle) => ({
    key: String(angle),
    name: `${stepName(angle)}, ${angle}° on the wheel`,
    oklab: oklabAt(
      HUE_FACE.lightness,
      Math.min(HUE_FACE.chroma, strongestAt(HUE_FACE.lightness, angle)),
      angle,
    ),
  })),
  { key: NO_HUE, name: "black to white", oklab: [HUE_FACE.lightness, 0, 0] },
];

/** Chooses a colour: a common cloth, or a hue of the wheel and then its shade card, with sliders for the last bit. */
export function ColourPicker({ value, onPick }: { value: Oklab; onPick: (oklab: Oklab) => void }) {
  const { wheel } = colorPoint(value);
  const [hue, setHue] = useState<number | null>(() => (wheel === null ? null : nearestHue(wheel)));
  const shades = useMemo(() => choicesOf(shadeCard(hue)), [hue]);
  const pick = (oklab: Oklab) => {
    const point = colorPoint(oklab);
    setHue(point.wheel === null ? null : nearestHue(point.wheel));
    onPick(oklab);
  };
  return (
    <div class="colour-picker">
      <ColourRadios
        legend="Common cloth colours"
        named
        choices={CLOTHS}
        chosen={keyOf(value)}
        onChoose={(choice) => pick(choice.oklab)}
      />
      <ColourRadios
        legend="Or a hue of the wheel"
        choices={HUES}
        chosen={hue === null ? NO_HUE : String(hue)}
        onChoose={(choice) => setHue(choice.key === NO_HUE ? null : Number(choice.key))}
      />
      <ColourRadios
        legend={
          hue === null
            ? "and how light it is"
            : `and its shade of ${stepName(hue)}: lighter above, stronger to the right`
        }
        choices={shades}
        chosen={keyOf(value)}
        {...(hue !== null && { columns: SHADE_COLUMNS })}
        onChoose={(choice) => onPick(choice.oklab)}
      />
      <FineTuning value={value} onPick={pick} />
    </div>
  );
}

function choicesOf(shades: readonly Oklab[]): readonly ColourChoice[] {
  const names = swatchNames(shades.map((oklab) => ({ oklab })));
  return shades.map((oklab, at) => ({ key: keyOf(oklab), name: names[at] ?? "", oklab }));
}

/** Colours that agree to four decimals are one. */
function keyOf(oklab: Oklab): string {
  return oklab.map((axis) => axis.toFixed(4)).join(" ");
}
