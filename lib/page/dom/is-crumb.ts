/** Whether an element belongs to the trail that leads to a page; templates leave its end as it was on another page. */
export const isCrumb = (element: Element): boolean => element.closest('[class*="crumb" i]') !== null;
