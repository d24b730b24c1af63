import { readPlaces } from "../page/read-places.ts";
import { followOnPage } from "./follow-on-page.ts";
import type { Parts } from "./parts.ts";

/** The part of the page script that puts products together, reads their pictures and hangs badges. */
export const showPart: Parts["show"] = { readPlaces, follow: followOnPage };
