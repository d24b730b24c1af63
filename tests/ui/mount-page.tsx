import { render } from "preact";
import { act } from "preact/test-utils";
import type { Closet } from "../../lib/closet/closet.ts";
import type { AskWorker } from "../../lib/link/messages.ts";
import { ClosetPage } from "../../lib/ui/closet-page/closet-page.tsx";
import { exampleTools, type SavedFiles } from "./example-tools.ts";

/** A closet page in the test's document, with the few moves a person makes. Each move waits until the page has settled. */
export interface MountedPage {
  readonly saved: SavedFiles;
  readonly text: () => string;
  /** The element of this role, or input by its label, whose name is or begins with `name`; throws where there is none. */
  readonly button: (name: string) => HTMLElement;
  readonly field: (label: string) => HTMLInputElement | HTMLSelectElement;
  readonly has: (name: string) => boolean;
  readonly click: (name: string) => Promise<void>;
  readonly choose: (label: string, value: string) => Promise<void>;
  readonly files: (label: string, files: readonly File[]) => Promise<void>;
  readonly go: (hash: string) => Promise<void>;
  readonly settle: (run?: () => void) => Promise<void>;
  readonly unmount: () => void;
}

/** Draws the page for `closet` and waits until it has been read. */
export async function mountPage(closet: Closet, ask?: AskWorker): Promise<MountedPage> {
  const saved: SavedFiles = new Map();
  const host = document.createElement("div");
  document.body.replaceChildren(host);
  location.hash = "";

  const settle = async (run: () => void = () => {}) => {
    await act(async () => {
      run();
      await new Promise((done) => setTimeout(done));
    });
    // What was just drawn may have asked the worker or read the closet; its answer is drawn in a second round.
    await act(() => new Promise((done) => setTimeout(done)));
  };
  const named = (element: Element) =>
    (element.getAttribute("aria-label") ?? element.textContent ?? "").replace(/\s+/g, " ").trim();
  const find = (selector: string, name: string) =>
    [...host.querySelectorAll<HTMLElement>(selector)].find((element) => named(element).startsWith(name));
  const button = (name: string) => {
    const found = find("button, a", name);
    if (!found) throw new Error(`No button is called “${name}”.`);
    return found;
  };
  const field = (label: string) => {
    const direct = find("input, select", label);
    const inside = find("label", label)?.querySelector("input, select");
    const found = direct ?? inside;
    if (found instanceof HTMLInputElement || found instanceof HTMLSelectElement) return found;
    throw new Error(`No field is labelled “${label}”.`);
  };
  const send = (element: HTMLElement, type: string) =>
    element.dispatchEvent(new Event(type, { bubbles: true }));

  await settle(() => render(<ClosetPage tools={exampleTools(closet, saved, ask)} />, host));
  return {
    saved,
    text: () => host.textContent ?? "",
    button,
    field,
    has: (name) => find("button, a", name) !== undefined,
    click: (name) => settle(() => (find("button, a", name) ?? field(name)).click()),
    choose: (label, value) =>
      settle(() => {
        const element = field(label);
        element.value = value;
        send(element, "input");
        send(element, "change");
      }),
    files: (label, files) =>
      settle(() => {
        const element = field(label);
        Object.defineProperty(element, "files", { value: files, configurable: true });
        send(element, "change");
      }),
    go: (hash) =>
      settle(() => {
        location.hash = hash;
        dispatchEvent(new Event("hashchange"));
      }),
    settle,
    unmount: () => render(null, host),
  };
}
