// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from "vitest";
import { makeBadge } from "../../lib/badge/badge.ts";
import { fillCard } from "../../lib/badge/fill-card.ts";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import type { Candidate } from "../../lib/fit/verdict.ts";
import { namedSwatches, namesText } from "../../lib/ui/named-swatches.ts";
import { clothOf } from "../../lib/visit/badge-model-of.ts";
import { cardModelOf } from "../../lib/visit/card-model-of.ts";
import { choicesOf } from "../../lib/visit/choices.ts";
import { briefOf, explained } from "../../lib/worker/verdict-views.ts";
import { openPopup } from "../popup/open-popup.tsx";
import { summary } from "../popup/page-of.ts";
import { manyPieces, threeWishes } from "./example-pieces.ts";
import { memoryCloset } from "./memory-closet.ts";
import { mountPage } from "./mount-page.tsx";

/** A colour as only a machine reads it: hex, or a colour function of CSS. */
const BARE = /#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|lab|lch|oklab|oklch|color)\(/i;
const TOLD = ["aria-label", "aria-valuetext", "title", "alt", "placeholder"] as const;

/** All that a person reads or hears of a part of a page, piece by piece. */
function wordsOf(root: ParentNode): readonly string[] {
  return [...root.querySelectorAll("*")].flatMap((element) => [
    element.childElementCount === 0 ? (element.textContent ?? "") : "",
    ...TOLD.map((name) => element.getAttribute(name) ?? ""),
  ]);
}

const bareOf = (root: ParentNode) => wordsOf(root).filter((words) => BARE.test(words));

const pieces = manyPieces(40);
const [candidate]: readonly Candidate[] = threeWishes().flatMap(({ id, title, slot, palette }) =>
  palette.swatches.length > 1 ? [{ key: id, title, slot, palette }] : [],
);
if (!candidate) throw new Error("The example wishes hold no print.");
const { key, title, palette } = candidate;
const names = namedSwatches(palette.swatches);
const close: (() => void)[] = [];
afterEach(() => {
  for (const end of close.splice(0)) end();
  vi.restoreAllMocks();
});

describe("every colour goes by its name and never by a bare number", () => {
  it("on the closet page, in its dialogs and on the wishlist", async () => {
    const page = await mountPage(memoryCloset({ pieces, wishes: threeWishes() }));
    close.push(page.unmount);
    const cards = [...document.querySelectorAll(".piece-card")];
    expect(cards).toHaveLength(pieces.length);
    for (const { name, swatches } of pieces) {
      const card = cards.find((one) => one.querySelector(".piece-name")?.textContent === name);
      expect(card?.textContent).toContain(namesText(namedSwatches(swatches)));
    }
    await page.settle(() => cards[0]?.querySelector("button")?.click());
    expect(bareOf(document)).toEqual([]);
    await page.click("Edit");
    for (const choice of document.querySelectorAll(".colour-choice input"))
      expect(choice.getAttribute("aria-label")).toMatch(/[a-z]{3}/);
    expect(document.querySelectorAll(".colour-choice input").length).toBeGreaterThan(60);
    expect(bareOf(document)).toEqual([]);
    await page.go("#wishlist");
    expect(document.body.textContent).toContain(namesText(names));
    expect(bareOf(document)).toEqual([]);
  });

  it("in the popup", async () => {
    const verdict = judge(candidate, prepareCloset(pieces));
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    const verdicts = new Map([[key, explained(candidate, verdict, byId, false)]]);
    const popup = await openPopup({ scripted: true, verdicts });
    close.push(popup.close);
    const brief = briefOf(candidate, verdict);
    await popup.send(summary([{ candidate, role: "tile", price: null, image: null, link: null, brief }]));
    await popup.press(title);
    expect(popup.text()).toContain(namesText(names));
    for (const line of popup.place.querySelectorAll(".piece .cloth"))
      expect(line.nextElementSibling?.textContent).toMatch(/[a-z]{3}/);
    expect(popup.place.querySelectorAll(".piece .cloth").length).toBeGreaterThan(3);
    expect(bareOf(popup.place)).toEqual([]);
  });

  it("on the badge and the card", async () => {
    // What is sealed off is to be read here.
    vi.spyOn(Element.prototype, "attachShadow").mockImplementation(function (this: Element) {
      return this as unknown as ShadowRoot;
    });
    const verdict = judge(candidate, prepareCloset(pieces));
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    const found = explained(candidate, verdict, byId, false);
    const root = document.createElement("div");
    const badge = makeBadge(
      root,
      root,
      () => {},
      () => {},
    );
    const { headline, count, names: said } = briefOf(candidate, verdict);
    const cloth = clothOf(palette, said);
    badge.show({ state: "ready", words: headline, count, cloth, title, note: "" });
    root.append(badge.button);
    expect(badge.button.title).toBe(namesText(names));
    const card = document.createElement("div");
    const never = () => Promise.reject(new Error("Nobody presses."));
    const actions = {
      toggleWish: never,
      own: never,
      picture: never,
      colorAt: () => "",
      pickPlace: never,
      pickChoice: never,
      unpick: never,
    };
    fillCard(card, cardModelOf(candidate, found, choicesOf(palette, found.names)), actions, {
      say: () => {},
      close: () => {},
    });
    expect(names.filter(({ name }) => !card.querySelector(".names")?.textContent?.includes(name))).toEqual(
      [],
    );
    for (const cloth of card.querySelectorAll(".piece .cloth"))
      expect(cloth.closest(".piece")?.querySelector(".soft")?.textContent).toMatch(/[a-z]{3}/);
    expect(card.querySelectorAll(".piece .cloth").length).toBeGreaterThan(3);
    expect([...bareOf(root), ...bareOf(card)]).toEqual([]);
  });
});
