import { defineUnlistedScript } from "wxt/utils/define-unlisted-script";
import { cardOpener } from "../lib/visit/card-opener.ts";
import { offerCard } from "../lib/visit/card-part.ts";

/** The part of the page script that shows cards; the worker brings it when the first badge is opened. */
export default defineUnlistedScript(() => offerCard(cardOpener));
