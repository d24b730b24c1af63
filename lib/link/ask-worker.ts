import { browser } from "wxt/browser";
import { createAsk } from "./ask.ts";
import type { AskWorker } from "./messages.ts";

/** Asks this extension's background worker, from any of its other contexts. */
export const askWorker: AskWorker = createAsk((message) => browser.runtime.sendMessage(message));
