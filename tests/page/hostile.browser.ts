import { afterAll, beforeAll, expect, it } from "vitest";
import { openPages, type Pages } from "./open-pages.ts";

let pages: Pages;
beforeAll(async () => {
  pages = await openPages();
});
afterAll(() => pages.close());

const ADD = `(() => {
  document.querySelector("main").insertAdjacentHTML("beforeend", '<form><div><a href="/p/late"><img src="/i/late.jpg" width="200" height="260"></a><h3>Late shirt</h3><p>€59</p></div><input name="matches"><input name="querySelectorAll"><input name="parentElement"></form>');
  const work = Reader.readAdded(document, [document.forms[0]]);
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value.map(({ title }) => title);
})()`;

it("is read on where a form came late whose fields are called as what it may be asked", async () => {
  const tile = '<a href="/p/camp"><img src="/i/camp.jpg" width="200" height="260"><b>Camp shirt</b> €49</a>';
  const page = await pages.open({ name: "", kind: "listing", products: [], body: `<main>${tile}</main>` });
  await pages.read(page);
  expect(await page.evaluate(ADD)).toContain("Late shirt");
  await page.close();
});
