import css from "./card.css?inline";
import type { CardActions, CardModel } from "./card-model.ts";
import { fillCard } from "./fill-card.ts";
import { makeHost } from "./host.ts";
import { make } from "./make.ts";
import { placeBeside } from "./place-beside.ts";

/** The one card of a page. */
export interface Card {
  /** Opens it beside a badge's button with a word of patience, closing whatever it showed; closes it where it was open there. */
  open(button: HTMLButtonElement, title: string): void;
  /** Fills it, if it is still open for that button. */
  show(button: HTMLButtonElement, model: CardModel, actions: CardActions): void;
  /** Says why there is nothing to show, if it is still open for that button. */
  fail(button: HTMLButtonElement, reason: string): void;
  close(): void;
}

/** A card in the browser's top layer, over everything a page may draw; gone when `signal` aborts. */
export function makeCard(signal: AbortSignal): Card {
  const body = make("div", "");
  const status = make("p", "status");
  status.role = "status";
  const panel = make("div", "card", body, status);
  panel.role = "dialog";
  panel.tabIndex = -1;
  const host = makeHost(panel, css);
  host.popover = "auto";
  let shownFor: HTMLButtonElement | null = null;

  const place = () => {
    if (!shownFor) return;
    const { clientWidth: width, clientHeight: height } = document.documentElement;
    const spot = placeBeside(shownFor.getBoundingClientRect(), panel.getBoundingClientRect(), {
      width,
      height: Math.min(height, innerHeight),
    });
    panel.style.left = `${spot.left}px`;
    panel.style.top = `${spot.top}px`;
  };
  let waiting = 0;
  const follow = () => {
    if (!shownFor) return;
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(place);
  };
  const say = (words: string) => {
    status.textContent = words;
  };
  const closed = () => {
    const button = shownFor;
    shownFor = null;
    if (button) button.ariaExpanded = "false";
    host.remove();
  };

  host.addEventListener("toggle", () => {
    if (!host.matches(":popover-open")) closed();
  });
  new ResizeObserver(place).observe(panel);
  addEventListener("scroll", follow, { passive: true, capture: true, signal });
  addEventListener("resize", follow, { passive: true, signal });
  signal.addEventListener("abort", closed);

  return {
    open(button, title) {
      // A press on the badge has dismissed the card already when it arrives here, but the page was not told yet.
      const again = shownFor === button;
      closed();
      if (again) return;
      shownFor = button;
      button.ariaExpanded = "true";
      panel.ariaLabel = title;
      body.replaceChildren(make("p", "title", title));
      say("Comparing with your closet.");
      // What is outside an open modal dialog of the page cannot be reached.
      const outer = hostOf(button).closest("dialog[open]") ?? document.documentElement;
      outer.append(host);
      host.showPopover({ source: button });
      place();
      panel.focus();
    },
    show(button, model, actions) {
      if (shownFor !== button) return;
      const focused = document.activeElement === host;
      say("");
      fillCard(body, model, actions, { say, close: () => host.hidePopover() });
      panel.scrollTop = 0;
      if (focused) panel.focus();
      place();
    },
    fail(button, reason) {
      if (shownFor === button) say(reason);
    },
    close: closed,
  };
}

function hostOf(button: HTMLElement): Element {
  const root = button.getRootNode();
  return root instanceof ShadowRoot ? root.host : button;
}
