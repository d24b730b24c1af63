import { render } from "preact";
import { browser } from "wxt/browser";
import { browserBell } from "../../lib/closet/browser-bell.ts";
import { openCloset } from "../../lib/closet/open-closet.ts";
import { askWorker } from "../../lib/link/ask-worker.ts";
import { ClosetPage } from "../../lib/ui/closet-page/closet-page.tsx";
import { saveText } from "../../lib/ui/save-text.ts";
import { samplePhoto } from "./sample-photo.ts";

render(
  <ClosetPage
    tools={{
      closet: openCloset(browserBell(browser.storage)),
      ask: askWorker,
      samplePhoto,
      saveText,
      now: Date.now,
      newId: () => crypto.randomUUID(),
    }}
  />,
  document.body,
);
