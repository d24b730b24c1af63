// @vitest-environment happy-dom
import { afterEach, expect, it } from "vitest";
import { imageOriginsOnPage } from "../../lib/ui/popup/image-origins-on-page.ts";
import { hostOf, pickImageOrigins } from "../../lib/ui/popup/pick-image-origins.ts";
import { IMAGE_ORIGINS_MAX } from "../../lib/worker/stores.ts";

afterEach(() => document.body.replaceChildren());

it("counts the origins of pictures and leaves the page as it was", () => {
  document.body.innerHTML = `
    <img src="https://cdn.example/a.jpg"><img src="https://cdn.example/b.jpg">
    <img src="https://img.example:8443/c.jpg"><img src="data:image/png;base64,AA"><img>`;
  const before = document.body.innerHTML;
  const counted = new Map(imageOriginsOnPage());
  expect(counted.get("https://cdn.example")).toBe(2);
  expect(counted.get("https://img.example:8443")).toBe(1);
  expect(document.body.innerHTML).toBe(before);
});

it("does not count a counting pixel, and counts what has not loaded yet", () => {
  document.body.innerHTML = `<img src="https://count.example/p.gif"><img src="https://cdn.example/a.jpg">`;
  const pixel = document.querySelector("img");
  Object.defineProperties(pixel, { complete: { value: true }, naturalWidth: { value: 1 } });
  expect(imageOriginsOnPage()).toEqual([["https://cdn.example", 1]]);
});

it("works from its own source, as the browser sends it", () => {
  document.body.innerHTML = `<img src="https://cdn.example/a.jpg">`;
  const again: unknown = new Function(`return (${imageOriginsOnPage.toString()})()`)();
  expect(again).toEqual([["https://cdn.example", 1]]);
});

it("puts the host of most pictures first, without the store's own and without ports", () => {
  const counted = [
    ["https://shop.example:8443", 90],
    ["https://img.example:1", 2],
    ["https://cdn.example", 4],
    ["https://img.example:2", 3],
    ["null", 9],
    ["chrome-extension://abc", 9],
  ];
  expect(pickImageOrigins(counted, "https://shop.example")).toEqual([
    "https://img.example",
    "https://cdn.example",
  ]);
});

it("never offers a public store hosts of a private network, but does so to a store in there", () => {
  const inside = [
    "http://192.168.1.1:8080",
    "http://[fd00::1]",
    "http://router",
    "http://nas.local",
    "http://a.localhost",
  ];
  const counted = [...inside, "https://pictures.example"].map((address) => [address, 3]);
  expect(pickImageOrigins(counted, "https://shop.example")).toEqual(["https://pictures.example"]);
  expect(pickImageOrigins(counted, "http://shop.localhost")).toHaveLength(6);
});

it("names no more hosts than one grant may", () => {
  const many = Array.from({ length: 40 }, (_, at) => [`https://cdn${at}.example`, 100 - at]);
  const picked = pickImageOrigins(many, "https://shop.example");
  expect(picked).toHaveLength(IMAGE_ORIGINS_MAX);
  expect(picked[0]).toBe("https://cdn0.example");
});

it.each([[null], ["x"], [[["https://cdn.example"]]], [[[1, 2]]]])("takes %j for no picture", (odd) => {
  expect(pickImageOrigins(odd, "https://shop.example")).toEqual([]);
});

it("says an origin as its host", () => {
  expect(hostOf("https://cdn.example")).toBe("cdn.example");
});
