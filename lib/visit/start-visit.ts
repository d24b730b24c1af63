import { readAdded } from "../page/read-added.ts";
import { readPage } from "../page/read-page.ts";
import { pictureReader } from "../pixels/picture-reader.ts";
import { readPalette } from "./read-palette.ts";
import { type VisitDeps, visit } from "./visit.ts";
import { whenCalm } from "./when-calm.ts";

/** Visits this page once it has come to rest, until `deps.signal` aborts. */
export async function startVisit(deps: VisitDeps): Promise<void> {
  const read = pictureReader(deps.signal);
  await whenCalm(document);
  if (deps.signal.aborted) return;
  await visit(deps, {
    readPage,
    readAdded,
    readPalette: (product, slot, source) => readPalette(product, slot, source, read, deps.ask),
  });
}
