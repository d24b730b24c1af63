import { nameKey } from "./plain-text.ts";

/** Whether an element belongs to the trail that leads to a page; templates leave its end as it was on another page. */
export const isCrumb = (element: Element): boolean => element.closest('[class*="crumb" i]') !== null;

/** Whether a heading says what the trail that leads to its page ends in. */
export function isLastCrumb(heading: Element): boolean {
  const trail = heading.ownerDocument.querySelector('[class*="breadcrumb" i]');
  const said = nameKey(trail?.textContent ?? "");
  const name = nameKey(heading.textContent);
  return name.length > 3 && said !== name && said.endsWith(name);
}
