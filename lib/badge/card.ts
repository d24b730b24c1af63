import css from "./card.css?inline";
import type { CardActions, CardModel } from "./card-model.ts";
import { fillCard } from "./fill-card.ts";
import { makeHost } from "./host.ts";
import { make } from "./make.ts";
import { type Box, placeBeside } from "./place-beside.ts";
import { plainSight } from "./plain-sight.ts";
import { unsearchable } from "./unsearchable.ts";

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

/**
 * A card in the browser's top layer, over everything a page may draw; gone when `signal` aborts. It stays where it opened
 * while its badge scrolls or slides away, so that no page can push it under a press.
 */
export function makeCard(signal: AbortSignal): Card {
  const status = make("p", "status");
  status.role = "status";
  const panel = make("div", "card", status);
  panel.role = "dialog";
  panel.tabIndex = -1;
  const host = makeHost(panel, css);
  host.popover = "auto";
  let shownFor: HTMLButtonElement | null = null;
  let body: HTMLElement | null = null;
  const sight = plainSight(panel);

  /** Where the badge was when it was pressed: a card that went along with it could be moved by the page. */
  let anchor: Box | null = null;

  const place = () => {
    if (!anchor) return;
    const { clientWidth: width, clientHeight: height } = document.documentElement;
    const view = { width, height: Math.min(height, innerHeight) };
    const spot = placeBeside(anchor, panel.getBoundingClientRect(), view);
    panel.style.left = `${spot.left}px`;
    panel.style.top = `${spot.top}px`;
  };
  const say = (words: string) => {
    status.replaceChildren(...(words ? [unsearchable(words)] : []));
  };
  const closed = () => {
    const button = shownFor;
    shownFor = anchor = null;
    if (button) button.ariaExpanded = "false";
    host.remove();
    // A page that kept the host could show it again, and what was begun on it may end later.
    body?.remove();
    body = null;
    say("");
  };
  /** A press counts only where the person can have seen what it is on: not in a double click, nor blindly. */
  const sift = (event: MouseEvent) => {
    const onButton = event.target instanceof Element && event.target.closest("button");
    if (!onButton) return;
    const settled = sight.settled();
    if (settled && event.detail < 2) return say("");
    event.stopImmediatePropagation();
    if (!settled) say("This page covered or moved the card a moment ago. Look at it, then press again.");
  };
  panel.addEventListener("click", sift, { capture: true });

  host.addEventListener("toggle", () => {
    if (!host.matches(":popover-open")) closed();
  });
  new ResizeObserver(place).observe(panel);
  const resized = ({ isTrusted }: Event) => {
    if (!shownFor || !isTrusted) return;
    const badge = shownFor.getBoundingClientRect();
    if (badge.width) anchor = badge;
    sight.moved();
    place();
  };
  addEventListener("resize", resized, { passive: true, signal });
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
      body = make("div", "", make("p", "title", title));
      panel.prepend(body);
      say("Comparing with your closet.");
      // What is outside an open modal dialog of the page cannot be reached.
      const outer = hostOf(button).closest("dialog[open]") ?? document.documentElement;
      outer.append(host);
      host.showPopover({ source: button });
      anchor = button.getBoundingClientRect();
      place();
      panel.focus();
    },
    show(button, model, actions) {
      const shown = body;
      if (shownFor !== button || !shown) return;
      const focused = document.activeElement === host;
      say("");
      fillCard(shown, model, actions, {
        say: (words) => {
          if (body === shown) say(words);
        },
        close: () => host.hidePopover(),
      });
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
