// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from "vitest";
import { SCREEN_MOST } from "../../lib/sample/seen-on-screen.ts";
import { type OpenPopup, openPopup } from "./open-popup.tsx";
import { product, summary } from "./page-of.ts";

const UNREAD = product("Grey cap", { kind: "unreadable", headline: "Can't read this picture" });
const READ = product("Red skirt", {});
const view = (text: string, right = 0.5) => ({
  box: { left: 0.25, top: 0, right, bottom: 1 },
  slot: "top",
  text,
});

let popup: OpenPopup;
afterEach(() => popup.close());

/** A popup that opened on a page whose picture could not be read. */
async function openOnUnread(scene: Parameters<typeof openPopup>[0]) {
  popup = await openPopup({ scripted: true, ...scene });
  await popup.send(summary([READ, UNREAD]));
  return popup;
}

describe("pictures that nothing else can read", () => {
  it("are read from one snapshot, and never more surely than a screen allows", async () => {
    const { browser, named } = await openOnUnread({ views: [view("Grey cap"), view("Blue cap")] });
    expect(named("snapshot")).toHaveLength(1);
    const asked = named("samplePicture") as [string, { pixels: { data: Uint8ClampedArray }; text: string }][];
    expect(asked.map(([, { pixels, text }]) => [pixels.data[0], text])).toEqual([
      [0, "Grey cap"],
      [1, "Blue cap"],
    ]);
    const palette = { ...browser.scene.sampled, confidence: SCREEN_MOST, evidence: ["pixels", "screen"] };
    expect(named("say")).toEqual([
      ["say", "taken"],
      ["say", [palette, palette]],
    ]);
  });

  it("lets the page go on as soon as the snapshot is taken", async () => {
    const { browser } = await openOnUnread({ views: [view("Grey cap")] });
    const order = browser.calls.map(([name]) => name);
    expect(order.indexOf("say")).toBe(order.indexOf("snapshot") + 1);
    expect(order.indexOf("say")).toBeLessThan(order.indexOf("samplePicture"));
  });

  it("are looked for once each time that the popup is opened, when the page has been read", async () => {
    popup = await openPopup({ scripted: true, views: [view("Grey cap")] });
    await popup.send(summary([READ, UNREAD], "reading"));
    expect(popup.named("holdStill")).toEqual([]);
    await popup.send(summary([READ]));
    expect(popup.named("holdStill")).toEqual([]);
    for (let round = 0; round < 3; round++) await popup.send(summary([READ, UNREAD]));
    expect(popup.named("holdStill")).toEqual([["holdStill", 7]]);
    expect(popup.named("snapshot")).toHaveLength(1);
  });

  it("cause no snapshot where none is in plain sight", async () => {
    const { named } = await openOnUnread({ views: [] });
    expect([named("holdStill").length, named("snapshot").length]).toEqual([1, 0]);
    expect(named("say")).toEqual([["say", "taken"]]);
  });

  it.each([
    ["a box that is no part of the screen", [view("Grey cap", 1.5)]],
    ["more pictures than a screen holds", Array.from({ length: 101 }, () => view("Grey cap"))],
    ["more words than the worker takes", [view("grey ".repeat(1_000))]],
    ["nothing of the kind", "nonsense"],
    ["no answer", new Error("The page is gone.")],
  ])("stay unread where the page sends %s", async (_, views) => {
    const { named, text } = await openOnUnread({ views });
    expect(named("snapshot")).toEqual([]);
    // Its badges come back at once.
    expect(named("say")).toEqual(views instanceof Error ? [] : [["say", "taken"]]);
    expect(text()).toContain("1 picture could not be read");
  });
});
