import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, type CDPSession, chromium, type Page, type Worker } from "playwright-core";
import { elementWithText } from "./element-with-text.ts";
import { findChromium } from "./find-chromium.ts";
import { QUIET_FLAGS } from "./open-browser.ts";
import { neverCame, waitForPopup } from "./wait-for-popup.ts";

/** Where `wxt build` puts the extension that is tested and shown. */
export const BUILT_EXTENSION = ".output/chrome-mv3";

/** A Chromium with the built extension. */
export interface ExtensionBrowser {
  readonly context: BrowserContext;
  /** The extension's id in this profile. */
  readonly id: string;
  /** Folder of the profile; hand it to `openExtension` again to start the same browser once more. */
  readonly profile: string;
  worker(): Promise<Worker>;
  /** Opens a page of the extension, "closet.html" for one. */
  openPage(path: string): Promise<Page>;
  /** Says yes beforehand to a request for these origins, since headless nobody can answer the browser's question. */
  approve(origins: readonly string[]): Promise<void>;
  /** Has the extension ask for these origins, approved beforehand, so that it holds them. */
  grant(origins: readonly string[]): Promise<void>;
  /** Clicks the toolbar button on `page`, which grants activeTab and opens the popup. */
  clickAction(page: Page): Promise<Popup>;
  /** Ends the background worker as the browser does when it is idle. */
  killWorker(): Promise<void>;
  close(): Promise<void>;
}

/** The real popup of the toolbar button; not a page that the driver lists, so it is driven by the protocol. */
export interface Popup {
  evaluate<T>(expression: string): Promise<T>;
  /** Waits until the expression is truthy. */
  waitFor(expression: string): Promise<void>;
  /** Clicks the first element matching `selector` whose text includes `text`, as a person's mouse would. */
  click(selector: string, text?: string): Promise<void>;
  screenshot(): Promise<Buffer>;
  close(): Promise<void>;
}

type Send = (method: string, params?: object) => Promise<unknown>;

async function sendInto(session: CDPSession, sessionId: string, method: string, params: object, id: number) {
  const answer = new Promise<unknown>((resolve, reject) => {
    const listen = (event: { sessionId: string; message: string }) => {
      if (event.sessionId !== sessionId) return;
      const message = JSON.parse(event.message);
      if (message.id !== id) return;
      session.off("Target.receivedMessageFromTarget", listen);
      if (message.error) reject(new Error(message.error.message));
      else resolve(message.result);
    };
    session.on("Target.receivedMessageFromTarget", listen);
  });
  await session.send("Target.sendMessageToTarget", {
    sessionId,
    message: JSON.stringify({ id, method, params }),
  });
  return answer;
}

function popupOf(session: CDPSession, targetId: string, send: Send): Popup {
  const evaluate = async <T>(expression: string): Promise<T> => {
    const answer = (await send("Runtime.evaluate", {
      expression,
      awaitPromise: true,
      returnByValue: true,
    })) as {
      result: { value: T };
      exceptionDetails?: { text: string; exception?: { description?: string } };
    };
    if (answer.exceptionDetails) {
      throw new Error(answer.exceptionDetails.exception?.description ?? answer.exceptionDetails.text);
    }
    return answer.result.value;
  };
  const waitFor = async (expression: string) => {
    await waitForPopup(
      () => evaluate<boolean>(`Boolean(${expression})`),
      async () => neverCame(expression, await evaluate("document.body.innerText")),
    );
  };
  return {
    evaluate,
    waitFor,
    click: async (selector, text = "") => {
      const found = elementWithText(selector, text);
      await waitFor(found);
      await evaluate(`${found}.scrollIntoView({ block: "center" })`);
      const box = await evaluate<{ x: number; y: number }>(
        `(() => { const b = ${found}.getBoundingClientRect(); return { x: b.x + b.width / 2, y: b.y + b.height / 2 }; })()`,
      );
      const mouse = { ...box, button: "left", clickCount: 1 };
      await send("Input.dispatchMouseEvent", { ...mouse, type: "mousePressed" });
      await send("Input.dispatchMouseEvent", { ...mouse, type: "mouseReleased" });
    },
    screenshot: async () => {
      const shot = (await send("Page.captureScreenshot", { format: "png" })) as { data: string };
      return Buffer.from(shot.data, "base64");
    },
    close: async () => {
      await session.send("Target.closeTarget", { targetId }).catch(() => undefined);
      await session.detach().catch(() => undefined);
    },
  };
}

/** Starts Chromium with the built extension, headless unless told otherwise. Build first: `npx wxt build`. */
export async function openExtension(
  options: { profile?: string; headless?: boolean } = {},
): Promise<ExtensionBrowser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error("No Chromium found. Run `npm test` once, or set CHROMIUM_PATH.");
  const profile = options.profile ?? mkdtempSync(join(tmpdir(), "hueward-profile-"));
  const built = join(process.cwd(), BUILT_EXTENSION);
  const context = await chromium.launchPersistentContext(profile, {
    executablePath,
    headless: options.headless ?? true,
    chromiumSandbox: false,
    viewport: options.headless === false ? null : { width: 1280, height: 900 },
    args: [
      ...QUIET_FLAGS,
      `--disable-extensions-except=${built}`,
      `--load-extension=${built}`,
      "--enable-unsafe-extension-debugging",
    ],
    ignoreDefaultArgs: ["--disable-extensions"],
  });
  const worker = async () => context.serviceWorkers()[0] ?? (await context.waitForEvent("serviceworker"));
  const id = new URL((await worker()).url()).host;
  const browser = context.browser();
  if (!browser) throw new Error("This Chromium gives no browser-wide session.");
  const openPage = async (path: string) => {
    const page = await context.newPage();
    await page.goto(`chrome-extension://${id}/${path}`);
    return page;
  };
  const approve = async (origins: readonly string[]) => {
    const page = await context.newPage();
    await page.goto("chrome://extensions");
    for (const origin of origins) {
      await page.evaluate(
        `chrome.developerPrivate.addHostPermission(${JSON.stringify(id)}, ${JSON.stringify(`${origin}/*`)})`,
      );
    }
    await page.close();
  };
  return {
    context,
    id,
    profile,
    worker,
    openPage,
    approve,
    grant: async (origins) => {
      await approve(origins);
      const page = await openPage("closet.html");
      const patterns = JSON.stringify(origins.map((origin) => `${origin}/*`));
      // The browser takes such a request only from within a click.
      await page.evaluate(`void (globalThis.asked = new Promise((answered, failed) => addEventListener("click", () => {
        chrome.permissions.request({ origins: ${patterns} }).then(answered, failed);
      }, { once: true })))`);
      await page.locator("h1").first().click();
      if ((await page.evaluate("asked")) !== true) throw new Error(`No grant for ${origins.join(", ")}.`);
      await page.close();
    },
    clickAction: async (page) => {
      const session = await browser.newBrowserCDPSession();
      const pageSession = await context.newCDPSession(page);
      const { targetInfo } = await pageSession.send("Target.getTargetInfo");
      const listed = (await session.send("Target.getTargets", { filter: [{ type: "tab" }] })) as {
        targetInfos: { targetId: string; url: string }[];
      };
      await page.bringToFront();
      const tab = listed.targetInfos.find((info) => info.url === targetInfo.url);
      if (!tab) throw new Error(`No tab shows ${targetInfo.url}.`);
      await (session.send as unknown as Send)("Extensions.triggerAction", { id, targetId: tab.targetId });
      const { targetId } = await waitForPopup(
        async () => {
          const { targetInfos } = await session.send("Target.getTargets");
          return targetInfos.find((info) => info.type === "page" && info.url.endsWith("/popup.html"));
        },
        () => "The popup did not open.",
      );
      const { sessionId } = await session.send("Target.attachToTarget", { targetId, flatten: false });
      let next = 0;
      return popupOf(session, targetId, (method, params = {}) =>
        sendInto(session, sessionId, method, params, ++next),
      );
    },
    killWorker: async () => {
      const session = await browser.newBrowserCDPSession();
      const { targetInfos } = await session.send("Target.getTargets");
      for (const info of targetInfos) {
        if (info.type === "service_worker" && info.url.includes(id)) {
          await session.send("Target.closeTarget", { targetId: info.targetId });
        }
      }
      await session.detach();
    },
    close: async () => {
      await context.close();
      if (!options.profile) rmSync(profile, { recursive: true, force: true });
    },
  };
}
