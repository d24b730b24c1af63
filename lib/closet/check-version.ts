import { type UseStore, update } from "idb-keyval";

/** The shape of the records that this code reads and writes. */
export const CLOSET_VERSION = 1;

/** Marks a new closet with its version; rejects where a newer version wrote it, so that nothing is misread. */
export async function checkVersion(store: UseStore): Promise<void> {
  await update<unknown>(
    "version",
    (version) => {
      if (version === undefined || version === CLOSET_VERSION) return CLOSET_VERSION;
      throw new Error("This closet was written by a newer Hueward. Update the extension to open it.");
    },
    store,
  );
}
