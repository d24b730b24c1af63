import { expect, it } from "vitest";
import { NOTHING_KNOWN, type PopupFacts, popupState } from "../../lib/ui/popup/popup-state.ts";
import { sayState } from "../../lib/ui/popup/say-state.ts";
import { product, summary } from "./page-of.ts";

const ON_STORE: PopupFacts = {
  ...NOTHING_KNOWN,
  tab: { id: 1, url: "https://shop.example/" },
  origin: "https://shop.example",
  closetSize: 3,
};
const RUNNING: PopupFacts = { ...ON_STORE, script: "running" };
const HALF = summary([product("a", {}), product("b", null)], "reading");

const CASES: readonly [what: string, facts: PopupFacts, state: object][] = [
  ["nothing is known yet", NOTHING_KNOWN, { kind: "opening" }],
  ["there is no tab", { ...NOTHING_KNOWN, tab: null }, { kind: "not-a-web-page" }],
  ["the page is the browser's own", { ...ON_STORE, origin: null }, { kind: "not-a-web-page" }],
  ["the browser refuses the page", { ...ON_STORE, refused: true }, { kind: "not-a-web-page" }],
  ["the script was not heard yet", ON_STORE, { kind: "opening" }],
  ["the store is off", { ...ON_STORE, script: "absent" }, { kind: "ready" }],
  [
    "a store is on but does not answer",
    { ...ON_STORE, script: "absent", grant: { imageOrigins: [] } },
    { kind: "lost" },
  ],
  ["the script went away", { ...RUNNING, script: "lost", summary: HALF }, { kind: "lost" }],
  [
    "products are looked for",
    { ...RUNNING, summary: summary([], "finding") },
    { kind: "reading", read: 0, failed: 0, total: 0, busy: true },
  ],
  [
    "half is read",
    { ...RUNNING, summary: HALF },
    { kind: "reading", read: 1, failed: 0, total: 2, busy: true },
  ],
  ["there is no product", { ...RUNNING, summary: summary([]) }, { kind: "nothing-found" }],
  [
    "all is read",
    { ...RUNNING, summary: summary([product("a", {})]) },
    { kind: "results", read: 1, failed: 0, total: 1, busy: false },
  ],
  [
    "nothing hangs in the closet",
    { ...RUNNING, summary: HALF, closetSize: 0 },
    { kind: "closet-empty", read: 1, failed: 0, total: 2, busy: true },
  ],
  [
    "the closet is not counted but the page says it is empty",
    { ...RUNNING, closetSize: null, summary: summary([product("a", { kind: "empty-closet" })]) },
    { kind: "closet-empty", read: 1, failed: 0, total: 1, busy: false },
  ],
];

it.each(CASES)("when %s", (_what, facts, state) => {
  expect(popupState(facts)).toEqual(state);
});

it("says something on every screen, and what to do wherever nothing is on its way", () => {
  for (const [, facts] of CASES) {
    const state = popupState(facts);
    const { heading, text, next } = sayState(state, "shop.example", facts.refused);
    expect(heading.length).toBeGreaterThan(5);
    expect(heading + (text ?? "")).not.toContain("!");
    const moves = state.kind === "opening" || state.kind === "reading" || state.kind === "results";
    if (!moves) expect(next ?? text).toMatch(/^switch-on$|^read-page$|^start-closet$|Open /);
  }
});

it("says how many pictures could not be read", () => {
  const page = summary([product("a", {}), product("b", { kind: "unreadable" })]);
  const state = popupState({ ...RUNNING, summary: page });
  expect(state).toMatchObject({ read: 2, failed: 1, total: 2 });
  expect(sayState(state, "shop.example", false).text).toContain("1 could not be read");
});

it("says that pictures further down wait to be scrolled to", () => {
  const state = popupState({ ...RUNNING, summary: summary([product("a", {}), product("b", null)]) });
  expect(sayState(state, "shop.example", false).text).toBe(
    "1 of 2 read; the others are read as you scroll to them.",
  );
});
