// @vitest-environment happy-dom
import { act } from "preact/test-utils";
import { afterEach, expect, it } from "vitest";
import { type OpenPopup, openOnPage, openPopup, PAGE, settle } from "./open-popup.tsx";
import { product, summary } from "./page-of.ts";

let popup: OpenPopup;
afterEach(() => popup.close());

it("asks for the store and its picture hosts in the click itself, and says so beforehand", async () => {
  popup = await openPopup();
  const { browser, button, text, named } = popup;
  expect(popup.heading()).toBe("Read shop.example by colour");
  expect(text()).toContain(
    "may read the pages of shop.example and the pictures on cdn.example and img.example",
  );
  browser.calls.length = 0;
  button("Switch on for shop.example").click();
  // Still inside the click: the browser only answers a request made there.
  expect(browser.calls).toEqual([
    ["requestOrigins", ["https://shop.example", "https://cdn.example", "https://img.example"]],
    ["intendStore", "https://shop.example", ["https://cdn.example", "https://img.example"]],
  ]);
  await settle();
  expect(named("runOnce")).toEqual([["runOnce", 7]]);
  expect(text()).toContain("shop.example is on");
  expect(text()).toContain("its pages and 2 picture hosts");
});

it("names every host it would ask for, however many", async () => {
  const hosts = ["a", "b", "c", "d", "e"].map((name) => `${name}.example`);
  popup = await openPopup({ counted: hosts.map((host, at) => [`https://${host}`, 9 - at]) });
  for (const host of hosts) expect(popup.text()).toContain(host);
  expect(popup.text()).toContain("c.example and 2 more");
});

it("switches nothing on when the person declines", async () => {
  popup = await openPopup({ answer: false });
  await popup.press("Switch on for shop.example");
  expect(popup.place.querySelector("[role=alert]")?.textContent).toContain("nothing was switched on");
  expect(popup.named("runOnce")).toEqual([]);
  expect(popup.heading()).toBe("Read shop.example by colour");
});

it("reads just this page without any grant, and stops", async () => {
  popup = await openPopup();
  await popup.press("Just this page");
  expect(popup.named("requestOrigins")).toEqual([]);
  await popup.send(summary(PAGE));
  expect(popup.heading()).toBe("3 products, best first");
  expect(popup.text()).toContain("shop.example, just this page");
  await popup.press("Stop");
  expect(popup.named("switchOff")).toEqual([["switchOff", { origin: "https://shop.example" }]]);
  expect(popup.heading()).toBe("Read shop.example by colour");
});

it("switches a store off in one click", async () => {
  popup = await openOnPage({ grant: { imageOrigins: ["https://cdn.example"] } });
  expect(popup.text()).toContain("cdn.example");
  await popup.press("Switch off");
  expect(popup.named("switchOff")).toEqual([["switchOff", { origin: "https://shop.example" }]]);
  expect(popup.heading()).toBe("Read shop.example by colour");
});

it("says when a store could not be switched off", async () => {
  popup = await openOnPage({
    grant: { imageOrigins: [] },
    refusals: { switchOff: "Hueward did not answer." },
  });
  await popup.press("Switch off");
  expect(popup.place.querySelector("[role=alert]")?.textContent).toContain("Hueward did not answer.");
  expect(popup.text()).toContain("shop.example is on");
});

it("starts reading by itself where the store is on but its script is not there yet", async () => {
  popup = await openPopup({ grant: { imageOrigins: [] } });
  expect(popup.named("runOnce")).toHaveLength(1);
  await popup.send(summary([], "finding"));
  expect(popup.heading()).toBe("Looking for products");
});

it("leads from an empty closet to its quick start", async () => {
  popup = await openPopup({ closetSize: 0 });
  expect(popup.text()).toContain("Your closet is empty, so there is nothing to compare with yet.");
  await popup.press("Just this page");
  await popup.send(summary([product("Red skirt", { kind: "empty-closet", headline: "Closet is empty" })]));
  expect(popup.heading()).toBe("Your closet is empty");
  expect(popup.titles()).toEqual(["Red skirt"]);
  await popup.press("Start your closet");
  expect(popup.named("openCloset")).toHaveLength(1);
});

it("says when the page does not answer, and reads again", async () => {
  popup = await openOnPage();
  await act(() => popup.browser.hangUp());
  expect(popup.heading()).toBe("This page does not answer");
  await popup.press("Read this page again");
  await popup.send(summary(PAGE));
  expect(popup.heading()).toBe("3 products, best first");
});

it("begins anew when another page has loaded in the tab", async () => {
  popup = await openOnPage();
  popup.browser.scene.tab = { id: 7, url: "https://other.example/" };
  popup.browser.scene.scripted = false;
  await act(() => popup.browser.pageLoaded());
  await settle();
  expect(popup.heading()).toBe("Read other.example by colour");
});

it.each([
  ["the browser's own page", { tab: { id: 7, url: "chrome://extensions" } }, "not a store’s web page"],
  ["a hidden address", { tab: { id: 7, url: null } }, "not a store’s web page"],
  ["no tab", { tab: null }, "not a store’s web page"],
  ["a page closed to extensions", { counted: new Error("Cannot access") }, "keeps extensions off this page"],
])("says what to do on %s", async (_what, scene, words) => {
  popup = await openPopup(scene);
  expect(popup.heading()).toBe("Nothing to read here");
  expect(popup.text()).toContain(words);
  expect(popup.text()).not.toContain("Switch on");
});

it("refuses a summary it cannot make out", async () => {
  popup = await openPopup({ scripted: true });
  await popup.send({ hello: "there" });
  expect(popup.place.querySelector("[role=alert]")?.textContent).toContain("could not make out");
});

it("moves the focus to the new heading when the pressed button is gone", async () => {
  popup = await openPopup();
  popup.button("Just this page").focus();
  await popup.press("Just this page");
  expect(document.activeElement).toBe(popup.place.querySelector("h1"));
});
