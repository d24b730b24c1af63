import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hiddenParts } from "../browser/hidden-parts.ts";
import { openExtension } from "../browser/open-extension.ts";
import { badgesOf, openScene, type Scene, switchOn, until } from "./store-visit.ts";

/** Badges on a freshly opened page of the store, which nobody switched on again. */
async function badgesCome(scene: Pick<Scene, "extension" | "store">): Promise<Page> {
  const page = await scene.extension.context.newPage();
  await page.goto(scene.store.shopUrl);
  const hidden = await hiddenParts(page);
  await until("badges by themselves", async () => (await badgesOf(hidden)).length >= 4);
  return page;
}

/**
 * What a person keeps outlives the worker, the browser and the extension's own code: loading it anew, as a start from
 * the command line does, counts as an update and loses the registered scripts. One story, told in order.
 */
describe("what was kept", () => {
  const profile = mkdtempSync(join(tmpdir(), "hueward-durable-"));
  let scene: Scene;

  beforeAll(async () => {
    scene = await openScene(profile);
    const page = await scene.extension.context.newPage();
    await page.goto(scene.store.shopUrl);
    await switchOn(scene, page);
  });
  afterAll(async () => {
    await scene?.close();
    rmSync(profile, { recursive: true, force: true });
  });

  it("is there after the worker died, at once", async () => {
    await scene.extension.killWorker();
    await badgesCome(scene);
  });

  it("is there after the browser was started again: the closet, the grant and the store's badges", async () => {
    await scene.extension.context.close();
    const extension = await openExtension({ profile });
    scene = { ...scene, extension, closetPage: await extension.openPage("closet.html") };
    await scene.closetPage.getByText("Pleated skirt").first().waitFor();
    const granted = await (await extension.worker()).evaluate("chrome.permissions.getAll()");
    expect(granted).toMatchObject({
      origins: expect.arrayContaining(scene.origins.map((origin) => `${origin}/*`)),
    });
    await badgesCome(scene);
  });
});
