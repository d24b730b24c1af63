import { Button } from "../button.tsx";
import type { PopupActions } from "./open-session.ts";
import type { PopupFacts, PopupState } from "./popup-state.ts";
import { sayState } from "./say-state.ts";

/** The heading of a screen, how far it is, and the one thing to do next. */
export function StateHead({
  state,
  facts,
  host,
  actions,
}: {
  state: PopupState;
  facts: PopupFacts;
  host: string;
  actions: PopupActions | null;
}) {
  const { heading, text, next } = sayState(state, host, facts.refused);
  const busy = "busy" in state && state.busy;
  // Progress is drawn but not spoken: a voice that counts every picture is in the way.
  const spoken = busy || text === null ? heading : `${heading}. ${text}`;
  return (
    <div class="state">
      <h1 tabIndex={-1}>{heading}</h1>
      {text && <p class="soft">{text}</p>}
      {busy && state.total > 0 && (
        <progress class="state-progress" aria-label="Products read" value={state.read} max={state.total} />
      )}
      {actions && next === "start-closet" && (
        <Button kind="strong" onClick={() => actions.openCloset()}>
          Start your closet
        </Button>
      )}
      {actions && next === "read-page" && (
        <Button kind="strong" onClick={() => void actions.readPage()}>
          Read this page again
        </Button>
      )}
      {actions && state.kind === "ready" && facts.closetSize === 0 && (
        <>
          <p>Your closet is empty, so there is nothing to compare with yet.</p>
          <Button onClick={() => actions.openCloset()}>Start your closet</Button>
        </>
      )}
      <p class="unseen" role="status">
        {spoken}
      </p>
    </div>
  );
}
