/** An element with a class, made node by node: a page's security policy may forbid markup in strings. */
export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  className: string,
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  element.className = className;
  element.append(...children);
  return element;
}

/** A button that only a person can press: events made by a script do nothing. */
export function makeButton(className: string, text: string, press: () => void): HTMLButtonElement {
  const button = make("button", className, text);
  button.type = "button";
  onPerson(button, "click", press);
  return button;
}

/** Listens to what a person does on an element of ours; the page's own handlers on the way up are left out of it. */
export function onPerson<K extends keyof HTMLElementEventMap>(
  element: HTMLElement,
  type: K,
  listener: (event: HTMLElementEventMap[K]) => void,
): void {
  element.addEventListener(type, (event) => {
    if (event.isTrusted) listener(event);
  });
}
