import { readAdded } from "../page/read-added.ts";
import { readPage } from "../page/read-page.ts";
import { bringPart } from "./parts.ts";
import { type VisitDeps, visit } from "./visit.ts";
import { whenCalm } from "./when-calm.ts";

/** Visits this page once it has come to rest, until `deps.signal` aborts. */
export async function startVisit(deps: VisitDeps): Promise<void> {
  await whenCalm(document);
  if (deps.signal.aborted) return;
  await visit(deps, {
    readPage,
    readAdded,
    follow: async (follow) => (await bringPart(deps.ask, "show"))(follow),
  });
}
