/** A light by the CIE 1931 x, y of its white, 2° observer. */
export interface Illuminant {
  readonly name: string;
  readonly white: readonly [x: number, y: number];
}

/**
 * Lamps and daylights: CIE 15:2004, "Colorimetry", tables T.1 and T.8 (A, D and FL series), and CIE 15:2018 (LED-B series), as carried
 * alike by several open transcriptions.
 */
export const ILLUMINANTS: readonly Illuminant[] = [
  { name: "A", white: [0.44757, 0.40745] },
  { name: "D50", white: [0.34567, 0.3585] },
  { name: "D55", white: [0.33242, 0.34743] },
  { name: "D65", white: [0.31271, 0.32902] },
  { name: "D75", white: [0.29902, 0.31485] },
  { name: "FL1", white: [0.3131, 0.33727] },
  { name: "FL2", white: [0.37208, 0.37529] },
  { name: "FL3", white: [0.4091, 0.3943] },
  { name: "FL4", white: [0.44018, 0.40329] },
  { name: "FL5", white: [0.31379, 0.34531] },
  { name: "FL6", white: [0.3779, 0.38835] },
  { name: "FL7", white: [0.31292, 0.32933] },
  { name: "FL8", white: [0.34588, 0.35875] },
  { name: "FL9", white: [0.37417, 0.37281] },
  { name: "FL10", white: [0.34609, 0.35986] },
  { name: "FL11", white: [0.38052, 0.37713] },
  { name: "FL12", white: [0.43695, 0.40441] },
  { name: "LED-B1", white: [0.456, 0.4078] },
  { name: "LED-B2", white: [0.4357, 0.4012] },
  { name: "LED-B3", white: [0.3756, 0.3723] },
  { name: "LED-B4", white: [0.3422, 0.3502] },
  { name: "LED-B5", white: [0.3118, 0.3236] },
];
