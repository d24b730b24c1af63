/** A shape of an SVG drawing. */
export function makeSvg(
  tag: string,
  attributes: Readonly<Record<string, string | number>>,
  ...children: readonly Node[]
): SVGElement {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  element.append(...children);
  return element;
}
