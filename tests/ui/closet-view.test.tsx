// @vitest-environment happy-dom
import { afterEach, expect, it } from "vitest";
import { twelvePieces } from "./example-pieces.ts";
import { memoryCloset } from "./memory-closet.ts";
import { type MountedPage, mountPage } from "./mount-page.tsx";

let page: MountedPage | null = null;
const open = async () => {
  page = await mountPage(memoryCloset({ pieces: twelvePieces() }));
  return page;
};

afterEach(() => page?.unmount());

const cardNames = () =>
  [...document.querySelectorAll(".piece-card .piece-name")].map((name) => name.textContent);
const card = (name: string) => {
  const found = [...document.querySelectorAll(".piece-card")].find((one) => one.textContent?.includes(name));
  if (!found) throw new Error(`No card is called “${name}”.`);
  return found;
};

it("marks the dot of the card that has the focus, and only that", async () => {
  const { settle } = await open();
  expect(document.querySelectorAll(".wheel-halo")).toHaveLength(0);
  await settle(() => card("Denim jeans").dispatchEvent(new Event("focusin")));
  expect(document.querySelectorAll(".wheel-halo")).toHaveLength(1);
  expect(document.querySelector(".wheel-caption")?.textContent).toContain("Denim jeans");
  await settle(() => card("Denim jeans").dispatchEvent(new Event("focusout")));
  expect(document.querySelectorAll(".wheel-halo")).toHaveLength(0);
});

it("marks the card of the dot that has the focus", async () => {
  const { settle, button } = await open();
  const dot = document.querySelector<HTMLElement>(".wheel-button[aria-label^='Tan bag']");
  await settle(() => dot?.focus());
  expect(document.querySelectorAll(".piece-card.lit")).toHaveLength(1);
  expect(card("Tan bag").classList).toContain("lit");
  await settle(() => button("Add a piece").focus());
  expect(document.querySelectorAll(".piece-card.lit")).toHaveLength(0);
});

it("goes round the wheel by arrow keys and stays one stop for the tab key", async () => {
  const { settle } = await open();
  const stops = () => [...document.querySelectorAll<HTMLElement>(".wheel-button[tabindex='0']")];
  expect(stops()).toHaveLength(1);
  const first = stops()[0];
  await settle(() => first?.focus());
  await settle(() =>
    document.activeElement?.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowLeft", bubbles: true })),
  );
  const dots = [...document.querySelectorAll(".wheel-button")];
  expect(document.activeElement).toBe(dots.at(-1));
  expect(stops()).toEqual([dots.at(-1)]);
});

it("shows where the pieces stand that go with the chosen one", async () => {
  const { settle, has } = await open();
  await settle(() => card("Denim jeans").querySelector("button")?.click());
  const panel = document.querySelector(".kin");
  expect(panel?.querySelector("h2")?.textContent).toBe("What goes with Denim jeans");
  const titles = [...(panel?.querySelectorAll("h3") ?? [])].map((title) => title.textContent ?? "");
  // Blue and the browns stand across the wheel, blacks and whites go with everything (common practice, no source).
  expect(titles[0]).toMatch(/^complementary/);
  expect(titles.at(-1)).toMatch(/^with a neutral7 pieces/);
  expect(document.querySelectorAll(".wheel-band")).toHaveLength(5);
  expect(has("Edit Denim jeans")).toBe(true);
  await settle(() => card("Denim jeans").querySelector("button")?.click());
  expect(document.querySelector(".kin")).toBeNull();
});

it("marks no places on the wheel for a neutral", async () => {
  const { settle } = await open();
  await settle(() => card("Grey jumper").querySelector("button")?.click());
  expect(document.querySelectorAll(".wheel-band")).toHaveLength(0);
  expect(document.querySelector(".kin h3")?.textContent).toMatch(/^with a neutral|^matching|^monochromatic/);
});

it("says which colour stands for a piece of several", async () => {
  const { settle } = await open();
  const note = () => document.querySelector(".kin-head p")?.textContent;
  await settle(() => card("White striped top").querySelector("button")?.click());
  expect(note()).toBe("Only its white is compared, with the first colour of each other piece.");
  await settle(() => card("Denim jeans").querySelector("button")?.click());
  expect(note()).toBeUndefined();
});

it("filters by slot and sorts by hue or by age", async () => {
  const { click, choose, text } = await open();
  const all = cardNames();
  expect(all).toHaveLength(12);
  expect(all.at(-1)).toMatch(/^White/);
  await click("Bottom");
  expect(text()).toContain("3 pieces");
  expect(cardNames().toSorted()).toEqual(["Beige chinos", "Black leggings", "Denim jeans"]);
  await click("All");
  await choose("Sort by", "newest");
  expect(cardNames()).toEqual(
    twelvePieces()
      .toReversed()
      .map(({ name }) => name),
  );
});
