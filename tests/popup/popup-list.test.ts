// @vitest-environment happy-dom
import { act } from "preact/test-utils";
import { afterEach, expect, it } from "vitest";
import { type OpenPopup, openOnPage, openPopup, PAGE, settle } from "./open-popup.tsx";
import { explainedAs, fitOf, product, summary } from "./page-of.ts";

let popup: OpenPopup;
afterEach(() => popup.close());

it("shows progress, then the best first", async () => {
  popup = await openPopup({ scripted: true });
  const { place } = popup;
  await popup.send(summary([product("Red skirt", {}), product("Old coat", null)], "reading"));
  expect(popup.heading()).toBe("Reading 2 products");
  expect(popup.text()).toContain("1 of 2 read so far.");
  expect(place.querySelector("progress")).toMatchObject({ value: 1, max: 2 });
  await popup.send(summary(PAGE.toReversed()));
  expect(popup.titles()).toEqual(["Red skirt", "Grey scarf", "Old coat"]);
  expect(place.querySelector("progress")).toBeNull();
});

it("speaks the screens but not every picture that was read", async () => {
  popup = await openPopup({ scripted: true });
  const spoken = () => popup.place.querySelector("[role=status]")?.textContent;
  const half = [product("Red skirt", {}), product("Old coat", null)];
  await popup.send(
    summary(
      half.map((one) => ({ ...one, brief: null })),
      "reading",
    ),
  );
  const before = spoken();
  await popup.send(summary(half, "reading"));
  expect(spoken()).toBe(before);
  await popup.send(summary(PAGE));
  expect(spoken()).toBe("3 products, best first");
});

it("does not move rows under a hand while it reads", async () => {
  popup = await openPopup({ scripted: true });
  const point = (event: string) =>
    act(() => void popup.place.querySelector(".rows")?.dispatchEvent(new Event(event)));
  await popup.send(summary([product("Grey scarf", { kind: "goes" })], "reading"));
  await point("pointerenter");
  await popup.send(summary(PAGE, "reading"));
  expect(popup.titles()).toEqual(["Grey scarf", "Red skirt", "Old coat"]);
  await point("pointerleave");
  expect(popup.titles()).toEqual(["Red skirt", "Grey scarf", "Old coat"]);
});

it("tells at a glance which pieces, and all of them when opened", async () => {
  popup = await openOnPage();
  const row = popup.place.querySelector(".row");
  expect(row?.textContent).toContain("Complementary: Navy blazer");
  expect(row?.textContent).toContain("With a neutral: White shirt");
  await popup.press("Red skirt");
  expect(popup.place.querySelector(".row-open")?.getAttribute("aria-expanded")).toBe("true");
  const reasons = row?.querySelector(".row-reasons")?.textContent;
  expect(reasons).toContain("The picture is dim");
  expect(reasons).toContain("perhaps split-complementary; may look alike to you");
  expect(reasons?.match(/may look alike/g)).toHaveLength(1);
  expect(reasons).toContain("With Navy blazer and White shirt");
  expect(row?.querySelectorAll(".dial")).toHaveLength(2);
  await popup.press("Old coat");
  expect(popup.text()).toContain("You have this shade already");
});

it("filters by what is there", async () => {
  popup = await openOnPage();
  await popup.press("Complementary");
  expect(popup.titles()).toEqual(["Red skirt"]);
  await popup.press("Owned shades");
  expect(popup.titles()).toEqual(["Old coat"]);
  await popup.press("All");
  expect(popup.titles()).toHaveLength(3);
});

it("shows a long list in steps", async () => {
  popup = await openPopup({ scripted: true });
  await popup.send(summary(Array.from({ length: 60 }, (_, at) => product(`Skirt ${at}`, {}))));
  expect(popup.titles()).toHaveLength(48);
  await popup.press("Show 12 more");
  expect(popup.titles()).toHaveLength(60);
});

it("saves to the wishlist and takes off again", async () => {
  popup = await openOnPage();
  await popup.press("Save to wishlist");
  expect(popup.named("saveWish")).toMatchObject([
    [
      "saveWish",
      {
        candidate: { key: "Red skirt" },
        price: { amount: 49, currency: "EUR" },
        pageUrl: "https://shop.example/skirts",
        picture: "https://cdn.example/Red%20skirt.jpg",
      },
    ],
  ]);
  await popup.press("Take off wishlist");
  expect(popup.named("dropWish")).toEqual([["dropWish", { id: "Red skirt" }]]);
  expect(popup.text()).not.toContain("Take off wishlist");
});

it("says why something was not saved", async () => {
  popup = await openOnPage({ refusals: { saveWish: "There is no room left on this disk." } });
  await popup.press("Save to wishlist");
  expect(popup.place.querySelector("[role=alert]")?.textContent).toContain(
    "There is no room left on this disk.",
  );
  expect(popup.text()).not.toContain("Take off wishlist");
});

it("asks again after a failed comparison", async () => {
  popup = await openOnPage({ refusals: { explain: "Hueward did not answer." } });
  expect(popup.text()).toContain("Hueward did not answer.");
  popup.browser.scene.refusals = {};
  await popup.press("Try again");
  await popup.send(summary(PAGE));
  expect(popup.text()).not.toContain("Hueward did not answer.");
  expect(popup.text()).toContain("Complementary: Navy blazer");
});

it("compares anew when the closet changes", async () => {
  popup = await openOnPage();
  const anew = explainedAs("Red skirt", { pieces: [fitOf("shirt", "analogous")] });
  popup.browser.scene.verdicts = new Map([["Red skirt", anew]]);
  await act(() => popup.browser.closetChanged());
  await settle();
  expect(popup.text()).toContain("Analogous: White shirt");
});

it("asks for whole verdicts in batches, the best first, and for each only once", async () => {
  popup = await openPopup({ scripted: true });
  const page = Array.from({ length: 30 }, (_, at) => product(`Skirt ${at}`, { kind: "goes", count: at }));
  await popup.send(summary(page));
  await popup.send(summary(page));
  const keys = (from: number, to: number) =>
    Array.from({ length: from - to + 1 }, (_, at) => ({ key: `Skirt ${from - at}` }));
  expect(popup.named("explain")).toMatchObject([
    ["explain", { candidates: keys(29, 18) }],
    ["explain", { candidates: keys(17, 6) }],
    ["explain", { candidates: keys(5, 0) }],
  ]);
});

it("says what could not be read and why, and offers the hosts that are missing", async () => {
  const unread = product("Far bag", { kind: "unreadable", headline: "Can’t read this picture" });
  const palette = {
    swatches: [],
    confidence: 0,
    evidence: [],
    reason: "Its picture is kept on another host.",
  };
  const page = summary([{ ...unread, candidate: { ...unread.candidate, palette } }]);
  popup = await openPopup({ scripted: true, grant: { imageOrigins: ["https://img.example"] } });
  await popup.send(page);
  expect(popup.text()).toContain("1 picture could not be read");
  expect(popup.text()).toContain("Its picture is kept on another host.");
  popup.browser.calls.length = 0;
  await popup.press("Allow these pictures");
  expect(popup.browser.calls[0]).toEqual([
    "requestOrigins",
    ["https://shop.example", "https://img.example", "https://cdn.example"],
  ]);
  expect(popup.named("reloadTab")).toEqual([["reloadTab", 7]]);
});

it("keeps a page's markup as text", async () => {
  popup = await openPopup({ scripted: true });
  await popup.send(summary([product("<img src=x onerror=alert(1)>", {})]));
  expect(popup.place.querySelector("img")).toBeNull();
  expect(popup.titles()).toEqual(["<img src=x onerror=alert(1)>"]);
});
