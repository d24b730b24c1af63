/** An expression for the first element of a page that matches and holds this text; undefined where there is none. */
export const elementWithText = (selector: string, text: string): string =>
  `[...document.querySelectorAll(${JSON.stringify(selector)})].find((e) => e.textContent.includes(${JSON.stringify(text)}))`;
