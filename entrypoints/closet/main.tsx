import { render } from "preact";
import { browser } from "wxt/browser";
import { browserBell } from "../../lib/closet/browser-bell.ts";
import { openCloset } from "../../lib/closet/open-closet.ts";
import { askWorker } from "../../lib/link/ask-worker.ts";
import { pixelsOfBlob } from "../../lib/pixels/pixels-of-blob.ts";
import { thumbnailOf } from "../../lib/pixels/thumbnail-of.ts";
import { samplePixels } from "../../lib/sample/sample-pixels.ts";
import { ClosetPage } from "../../lib/ui/closet-page/closet-page.tsx";
import { photoName } from "../../lib/ui/closet-page/photo-name.ts";
import { saveText } from "../../lib/ui/save-text.ts";
import { readSlot } from "../../lib/words/read-words.ts";

render(
  <ClosetPage
    tools={{
      closet: openCloset(browserBell(browser.storage)),
      ask: askWorker,
      samplePhoto: async (file) => {
        const text = photoName(file.name);
        const [{ data, width, height }, picture] = await Promise.all([pixelsOfBlob(file), thumbnailOf(file)]);
        return { palette: samplePixels(data, width, height, { slot: readSlot(text), text }), picture };
      },
      saveText,
      now: Date.now,
      newId: () => crypto.randomUUID(),
    }}
  />,
  document.body,
);
