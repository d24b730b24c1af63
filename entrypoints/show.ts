import { defineUnlistedScript } from "wxt/utils/define-unlisted-script";
import { followOnPage } from "../lib/visit/follow-on-page.ts";
import { offerPart } from "../lib/visit/parts.ts";

/** The part of the page script that reads pictures and hangs badges. */
export default defineUnlistedScript(() => offerPart("show", followOnPage));
