/** A whole visit as one script, with a worker that keeps what it is asked. */
import type { Candidate } from "../../lib/fit/verdict.ts";
import type {
  AskWorker,
  ExplainedVerdict,
  PageSummary,
  VerdictBrief,
  WorkerRequestName,
  WorkerRequests,
} from "../../lib/link/messages.ts";
import { sampleViews } from "../../lib/sample/sample-views.ts";
import { cardOpener } from "../../lib/visit/card-opener.ts";
import { offerPart } from "../../lib/visit/parts.ts";
import { showPart } from "../../lib/visit/show-part.ts";
import { startVisit } from "../../lib/visit/start-visit.ts";

export const asked: { name: string; request: unknown }[] = [];
export const summaries: PageSummary[] = [];

const ended = new AbortController();
export const stop = () => ended.abort();

function briefOf({ key, title, palette }: Candidate): VerdictBrief {
  const headline = `${title}: ${palette.evidence.join(" ") || palette.reason}`;
  const kind = palette.swatches.length ? "goes" : "unreadable";
  return { key, headline, kind, count: 0, names: palette.swatches.map((_, n) => `colour ${n + 1}`) };
}

function explain(candidate: Candidate): ExplainedVerdict {
  const { key, names, headline, kind, count } = briefOf(candidate);
  const verdict = {
    headline,
    kind,
    count,
    duplicates: [],
    pieces: [],
    looks: 0,
    lookExamples: [],
    caution: null,
  };
  return { key, names, verdict, pieces: {}, wished: false };
}

const said = { swatches: [{ oklab: [0.4, 0.1, 0.05], share: 1 }], confidence: 0.7, evidence: ["pixels"] };
const answers: { readonly [N in WorkerRequestName]?: (request: WorkerRequests[N]["request"]) => unknown } = {
  recall: () => ({ slots: {}, corrections: {}, palettes: {} }),
  samplePicture: ({ pixels, others, slot, text }) => sampleViews(pixels, others, { slot, text }),
  readPicture: () => said,
  judge: ({ candidates }) => candidates.map(briefOf),
  explain: ({ candidates }) => candidates.map(explain),
  saveWish: ({ candidate }) => ({ id: candidate.key }),
};

const ask = (async (name: WorkerRequestName, request: never) => {
  // As a message would, it must survive cloning.
  asked.push({ name, request: structuredClone(request) });
  return answers[name]?.(request) ?? null;
}) as AskWorker;

offerPart(
  "show",
  showPart(() => undefined),
);
void startVisit({
  ask,
  publish: (summary) => summaries.push(structuredClone(summary)),
  onClosetChange: () => undefined,
  openCard: cardOpener(ask, ended.signal),
  signal: ended.signal,
});
