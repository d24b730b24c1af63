import { defineUnlistedScript } from "wxt/utils/define-unlisted-script";
import { cardOpener } from "../lib/visit/card-opener.ts";
import { offerPart } from "../lib/visit/parts.ts";

/** The part of the page script that shows cards. */
export default defineUnlistedScript(() => offerPart("card", cardOpener));
