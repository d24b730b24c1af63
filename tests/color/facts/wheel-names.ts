/**
 * The twelve steps of the artist's circle (J. Itten, "The Art of Color", 1961) and the colour that four published sources of names give
 * each: CSS Color 4; the XKCD survey (R. Munroe, 2010); the ISCC-NBS "strong" centroids (Kelly & Judd, 1976); fabrics (P. Centore,
 * JAIC 25, 2020). Null where a source has no such name.
 */
export const WHEEL_NAMES: readonly {
  readonly name: string;
  readonly wheel: number;
  readonly css: string | null;
  readonly xkcd: string | null;
  readonly iscc: string | null;
  readonly caus: string | null;
}[] = [
  { name: "red", wheel: 0, css: "#ff0000", xkcd: "#e50000", iscc: "#bc3f4a", caus: "#a13a3e" },
  { name: "red-orange", wheel: 30, css: "#ff4500", xkcd: "#fd3c06", iscc: "#d9603b", caus: "#944736" },
  { name: "orange", wheel: 60, css: "#ff8c00", xkcd: "#f97306", iscc: "#ed872d", caus: "#de7c44" },
  { name: "yellow-orange", wheel: 90, css: null, xkcd: "#fcb001", iscc: "#eaa221", caus: "#c79549" },
  { name: "yellow", wheel: 120, css: "#ffff00", xkcd: "#ffff14", iscc: "#d4af37", caus: "#e1c058" },
  { name: "yellow-green", wheel: 150, css: "#9acd32", xkcd: "#c0fb2d", iscc: "#7e9f2e", caus: null },
  { name: "green", wheel: 180, css: "#008000", xkcd: "#15b01a", iscc: "#007959", caus: "#5a8366" },
  { name: "blue-green", wheel: 210, css: "#008080", xkcd: "#137e6d", iscc: "#007a74", caus: "#075763" },
  { name: "blue", wheel: 240, css: "#0000ff", xkcd: "#0343df", iscc: "#0067a5", caus: "#557895" },
  { name: "blue-violet", wheel: 270, css: null, xkcd: "#5d06e9", iscc: "#545aa7", caus: "#2e314b" },
  { name: "violet", wheel: 300, css: "#800080", xkcd: "#7e1e9c", iscc: "#604e97", caus: "#5a3b6b" },
  { name: "red-violet", wheel: 330, css: "#c71585", xkcd: "#9e0168", iscc: "#9e4f88", caus: "#873064" },
];
