import { defineUnlistedScript } from "wxt/utils/define-unlisted-script";
import { onSnapshot } from "../lib/link/on-snapshot.ts";
import { offerPart } from "../lib/visit/parts.ts";
import { showPart } from "../lib/visit/show-part.ts";

/** The part of the page script that puts products together, reads pictures and hangs badges. */
export default defineUnlistedScript(() => offerPart("show", showPart(onSnapshot)));
