import { render } from "preact";
import { Popup } from "../../lib/ui/popup/popup.tsx";
import { popupBrowser } from "./browser.ts";

const place = document.getElementById("popup");
if (place) render(<Popup browser={popupBrowser} />, place);
