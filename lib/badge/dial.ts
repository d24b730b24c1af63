import type { DialModel } from "./card-model.ts";
import { makeSvg } from "./make-svg.ts";

/** The artist's wheel as a thin ring, a dot at each hue and the chord between; a neutral sits in the middle. */
export function makeDial(dots: DialModel): SVGElement {
  const places = dots.map(({ css, angle }) => {
    const turn = ((angle ?? 0) * Math.PI) / 180;
    const radius = angle === null ? 0 : 10;
    return { css, x: radius * Math.sin(turn), y: -radius * Math.cos(turn) };
  });
  return makeSvg(
    "svg",
    { class: "dial", viewBox: "-14 -14 28 28", "aria-hidden": "true" },
    makeSvg("circle", { r: 10 }),
    makeSvg("path", { d: `M${places.map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`).join("L")}` }),
    ...places.map(({ css, x, y }) => {
      const dot = makeSvg("circle", { r: 3.5, cx: x.toFixed(2), cy: y.toFixed(2) });
      dot.style.fill = css;
      return dot;
    }),
  );
}
