import type { Sitting } from "../link/on-snapshot.ts";
import { readPlaces } from "../page/read-places.ts";
import { followOnPage } from "./follow-on-page.ts";
import type { Parts } from "./parts.ts";
import { sitForSnapshot } from "./sit-for-snapshot.ts";

/**
 * The part of the page script that puts products together, reads their pictures and hangs badges.
 * @param onSnapshot calls its listener each time that a snapshot is about to be taken
 */
export const showPart = (onSnapshot: (sit: () => Sitting, signal: AbortSignal) => void): Parts["show"] => ({
  readPlaces,
  follow(deps) {
    const follower = followOnPage(deps);
    onSnapshot(() => sitForSnapshot(follower), deps.signal);
    return follower;
  },
});
