import { elementWithText } from "./element-with-text.ts";
import type { Popup } from "./open-extension.ts";
import { neverCame, waitForPopup } from "./wait-for-popup.ts";

/** As the popup of Chromium, without a picture: the protocol takes none of it. */
export type FirefoxPopup = Omit<Popup, "screenshot">;

/** Evaluates an expression in the browser's own window and gives its JSON value. */
export type InWindow = <T>(expression: string) => Promise<T>;

/** A popup that is still being put on the screen loses what it is asked; ms until it counts as lost. */
const ANSWER_MS = 5_000;

const POPUP = `document.querySelector("browser.webextension-popup-browser")`;

/** Runs `body` of an async function in the popup's process; it sees `document` and `window` and returns JSON. */
const inPopup = (body: string) => {
  const script = `(async (window, document) => {
    try { return { value: await (async () => { ${body} })() }; }
    catch (error) { return { problem: String(error) }; }
  })(content, content.document).then((answer) => sendAsyncMessage("told", answer));`;
  return `new Promise((told) => {
    const { messageManager } = ${POPUP};
    const hear = ({ data }) => { messageManager.removeMessageListener("told", hear); told(data); };
    messageManager.addMessageListener("told", hear);
    setTimeout(told, ${ANSWER_MS}, { problem: "The popup did not answer." });
    messageManager.loadFrameScript("data:," + encodeURIComponent(${JSON.stringify(script)}), false);
  })`;
};

/**
 * The real popup of the toolbar button in Firefox. The protocol lists no popups, so the browser's own window reaches
 * into it; its clicks count as a person's, as the browser demands for a grant.
 * @param extension an expression that gives the extension in the browser's own window
 */
export async function firefoxPopup(inWindow: InWindow, extension: string): Promise<FirefoxPopup> {
  const run = async <T>(body: string): Promise<T> => {
    const { value, problem } = await inWindow<{ value: T; problem?: string }>(inPopup(body));
    if (problem) throw new Error(problem);
    return value;
  };
  const evaluate = <T>(expression: string) => run<T>(`return ${expression};`);
  // A look that got lost, or came before there was a page, is taken again.
  const sees = (expression: string) => evaluate<boolean>(`Boolean(${expression})`).catch(() => false);
  const waitFor = async (expression: string) => {
    await waitForPopup(
      () => sees(expression),
      async () => neverCame(expression, await evaluate("document.body.innerText")),
    );
  };
  const close = async () => {
    await inWindow(`${POPUP}?.closest("panel").hidePopup()`);
    await waitForPopup(
      () => inWindow<boolean>(`!${POPUP}`),
      () => "The popup did not close.",
    );
  };
  // The button would only close one that a failed step left open.
  await close();
  await inWindow(`(async () => {
    const { ExtensionParent } = ChromeUtils.importESModule("resource://gre/modules/ExtensionParent.sys.mjs");
    await ExtensionParent.apiManager.global.browserActionFor(${extension}).triggerAction(window);
  })()`);
  await waitForPopup(
    () => sees("document.querySelector('.popup')"),
    () => "The popup did not open.",
  );
  return {
    evaluate,
    waitFor,
    click: async (selector, text = "") => {
      const found = elementWithText(selector, text);
      await waitFor(found);
      await run(`const hand = window.windowUtils.setHandlingUserInput(true);
        try { ${found}.click(); } finally { hand.destruct(); }`);
    },
    close,
  };
}
