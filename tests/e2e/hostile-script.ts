/**
 * What the hostile page runs first: everything that code in its world could meet is put in the page's own hands, and
 * much of it broken. `heard` tells what anybody but the page called; `pwned` that markup or a picture ran as script.
 */
export const HOSTILE_SCRIPT = `
var heard = [], added = [], pwned = false;
const real = { attachShadow: Element.prototype.attachShadow, observe: MutationObserver, define: customElements.define };
Element.prototype.attachShadow = function (init) {
  heard.push("attachShadow");
  return real.attachShadow.call(this, { ...init, mode: "open" });
};
for (const name of ["fetch", "postMessage", "MutationObserver", "IntersectionObserver", "ResizeObserver", "MessageChannel",
  "CSSStyleSheet", "OffscreenCanvas", "Image", "createImageBitmap", "requestIdleCallback", "requestAnimationFrame"])
  window[name] = function () { heard.push(name); throw new Error("hostile"); };
for (const name of ["querySelectorAll", "querySelector", "closest", "matches", "getAttribute", "append", "animate", "getBoundingClientRect"])
  Element.prototype[name] = function () { heard.push(name); throw new Error("hostile"); };
for (const [owner, names] of [[Node.prototype, ["textContent", "parentElement", "isConnected"]], [Element.prototype, ["children", "id", "className"]],
  [HTMLImageElement.prototype, ["src", "currentSrc", "naturalWidth", "complete"]], [Document.prototype, ["body", "documentElement", "title"]]])
  for (const name of names)
    Object.defineProperty(owner, name, { get() { heard.push(name); throw new Error("hostile"); } });
for (const name of ["drawImage", "getImageData"])
  CanvasRenderingContext2D.prototype[name] = function () { heard.push(name); throw new Error("hostile"); };
for (const name of ["map", "filter", "flatMap", "push", "includes", "slice"]) {
  const method = Array.prototype[name];
  Array.prototype[name] = function (...all) { if (this !== heard && this !== added) heard[heard.length] = name; return method.apply(this, all); };
}
JSON.parse = JSON.stringify = () => { throw new Error("hostile"); };
for (const type of ["message", "messageerror"]) addEventListener(type, () => heard.push(type));
new real.observe((records) => {
  for (const { addedNodes } of records) for (const node of addedNodes) {
    if (node.nodeType !== 1 || document.readyState !== "complete" || node.localName === "i" || added.includes(node)) continue;
    added.push(node);
    // Whoever is an element of the page's own making is let into its shadow, be it closed.
    if (node.localName.includes("-")) try {
      real.define.call(customElements, node.localName, class extends HTMLElement {
        constructor() { super(); try { this.inside = this.attachInternals(); } catch {} }
      });
    } catch {}
  }
}).observe(document, { childList: true, subtree: true });
`;

/** What it does once its products stand: floods itself, and presses all that was hung on it as well as a script can. */
export const HOSTILE_PRESSES = `(() => {
  for (const host of added) {
    host.click();
    host.focus();
    for (const type of ["click", "pointerdown", "pointerup", "mousedown", "mouseup"])
      host.dispatchEvent(new MouseEvent(type, { bubbles: true, composed: true, detail: 1 }));
    for (const key of ["Enter", " "]) host.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, composed: true }));
    try { host.showPopover(); } catch {}
  }
  for (let y = 0; y < innerHeight; y += 20) for (let x = 0; x < innerWidth; x += 20) {
    const there = document.elementFromPoint(x, y);
    if (added.includes(there)) there.click();
  }
})()`;

/** What it can see of what was hung on it, without anything a person did. */
export const HOSTILE_LOOK = `({
  pwned, heard: [...new Set(heard)],
  roots: added.map((host) => host.shadowRoot ?? host.inside?.shadowRoot ?? null).filter(Boolean).length,
  words: added.map((host) => host.outerHTML + host.innerText).join(" "),
  boxes: [...new Set(added.map((host) => {
    const { width, height } = host.getClientRects()[0] ?? { width: 0, height: 0 };
    return width + " x " + height + ", " + host.offsetWidth + " x " + host.offsetHeight;
  }))],
  moving: document.getAnimations().length,
  polluted: Object.keys(Object.prototype).length + Object.keys({}).length,
})`;

/** Which of these words it finds by searching, or reads by moving a selection through the page, up to 300 words each way. */
export const HOSTILE_SEARCH = (words: readonly string[]) => `((words) => {
  const selection = getSelection();
  let read = "";
  for (const [at, way] of [[0, "forward"], [document.lastChild.childNodes.length, "backward"]]) {
    selection.collapse(document.lastChild, at);
    for (let n = 0; n < 300; n++) {
      selection.modify("extend", way, "word");
      read += " " + selection.toString();
      if (way === "forward") selection.collapseToEnd(); else selection.collapseToStart();
    }
  }
  const found = [];
  for (const word of words) {
    selection.removeAllRanges();
    if (find(word, false, false, true) || read.replace(/\\s+/g, " ").includes(word)) found[found.length] = word;
  }
  selection.removeAllRanges();
  return found;
})(${JSON.stringify(words)})`;
