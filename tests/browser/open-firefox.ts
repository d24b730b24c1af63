import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openBidi } from "./bidi.ts";
import { findFirefox } from "./find-firefox.ts";
import { type FirefoxPage, firefoxPage, jsonOf } from "./firefox-page.ts";
import { type FirefoxPopup, firefoxPopup } from "./firefox-popup.ts";

/** Where `wxt build -b firefox` puts the extension. */
const BUILT_FOR_FIREFOX = ".output/firefox-mv3";

/** The add-on's id, as wxt.config.ts names it. */
const ADDON = "hueward@hueward.invalid";

/** The host of the add-on's pages, which Firefox otherwise draws by lot. */
const HOST = "1f0e5a52-7c1b-4c55-9a53-3d1f8f3f8a10";

const PREFERENCES = {
  "extensions.webextensions.uuids": JSON.stringify({ [ADDON]: HOST }),
  // Headless nobody can answer the browser's question; a request made by a click is granted.
  "extensions.webextOptionalPermissionPrompts": false,
};

/** How long Firefox may take to start before the test fails; ms. */
const START_MS = 60_000;

/** The add-on, as the browser's own window sees it. */
const EXTENSION = `WebExtensionPolicy.getByID(${JSON.stringify(ADDON)}).extension`;

/** A Firefox with the built extension as a temporary add-on. */
export interface FirefoxBrowser {
  readonly version: string;
  newPage(): Promise<FirefoxPage>;
  /** Opens a page of the extension, "closet.html" for one. */
  openPage(path: string): Promise<FirefoxPage>;
  /** Presses the toolbar button for the tab in front, which grants activeTab and opens the popup. */
  clickAction(): Promise<FirefoxPopup>;
  /** Ends the background page as the browser does when it is idle; true once it is gone. */
  endBackground(): Promise<boolean>;
  close(): Promise<void>;
}

function addressOf(firefox: ChildProcess): Promise<string> {
  return new Promise((told, failed) => {
    let said = "";
    const timer = setTimeout(() => failed(new Error(`Firefox did not start:\n${said}`)), START_MS);
    firefox.once("exit", () => {
      clearTimeout(timer);
      failed(new Error(`Firefox ended at once:\n${said}`));
    });
    firefox.stderr?.on("data", (data) => {
      said += data;
      const address = /WebDriver BiDi listening on (ws:\S+)/.exec(said)?.[1];
      if (!address) return;
      clearTimeout(timer);
      told(address);
    });
  });
}

/** Starts a headless Firefox with the built extension. Build first: `npx wxt build -b firefox`. */
export async function openFirefox(): Promise<FirefoxBrowser> {
  const program = findFirefox();
  if (!program) throw new Error("No Firefox found. Run `npm test` once, or set FIREFOX_PATH.");
  const profile = mkdtempSync(join(tmpdir(), "hueward-firefox-"));
  const lines = Object.entries(PREFERENCES).map((pair) => `user_pref(${JSON.stringify(pair).slice(1, -1)});`);
  writeFileSync(join(profile, "user.js"), lines.join("\n"));
  const args = ["--headless", "--no-remote", "--profile", profile, "--remote-debugging-port=0"];
  // System access opens the browser's own window to the driver: its toolbar button, and the pages of extensions.
  const firefox = spawn(program, [...args, "--remote-allow-system-access", "about:blank"], {
    stdio: ["ignore", "ignore", "pipe"],
  });
  const gone = new Promise<void>((ended) => firefox.once("exit", () => ended()));
  const end = async () => {
    firefox.kill();
    await gone;
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    const bidi = await openBidi(await addressOf(firefox));
    await bidi.send("webExtension.install", {
      extensionData: { type: "path", path: join(process.cwd(), BUILT_FOR_FIREFOX) },
    });
    const tree = await bidi.send<{ contexts: { context: string }[] }>("browsingContext.getTree", {
      "moz:scope": "chrome",
    });
    const inWindow = <T>(expression: string) =>
      jsonOf<T>(bidi, { context: tree.contexts[0]?.context }, expression);
    const newPage = async () => {
      const { context } = await bidi.send<{ context: string }>("browsingContext.create", { type: "tab" });
      return firefoxPage(bidi, context);
    };
    return {
      version: await inWindow("Services.appinfo.version"),
      newPage,
      openPage: async (path) => {
        const page = await newPage();
        await page.goto(`moz-extension://${HOST}/${path}`, "none");
        return page;
      },
      clickAction: () => firefoxPopup(inWindow, EXTENSION),
      endBackground: async () => {
        await inWindow(`${EXTENSION}.terminateBackground()`);
        return inWindow(`${EXTENSION}.backgroundState === "stopped"`);
      },
      close: async () => {
        bidi.close();
        await end();
      },
    };
  } catch (error) {
    await end();
    throw error;
  }
}
