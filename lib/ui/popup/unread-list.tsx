import { Button } from "../button.tsx";
import { countOf } from "../words.ts";
import type { PopupActions } from "./open-session.ts";
import { hostOf } from "./pick-image-origins.ts";
import type { PopupFacts } from "./popup-state.ts";
import { isUnread } from "./rank-products.ts";
import { ungrantedOrigins } from "./ungranted-origins.ts";

/** The products whose pictures gave no colour, each with the reason, and what might help. */
export function UnreadList({ facts, actions }: { facts: PopupFacts; actions: PopupActions }) {
  const unread = facts.summary?.products.filter(isUnread) ?? [];
  if (unread.length === 0) return null;
  const missing = ungrantedOrigins(facts);
  const granted = facts.grant?.imageOrigins ?? [];
  return (
    <details class="unread">
      <summary>{countOf(unread.length, "picture")} could not be read</summary>
      <ul>
        {unread.map(({ candidate, brief }) => (
          <li key={candidate.key}>
            {candidate.title}
            <span class="unread-reason soft">{candidate.palette.reason ?? brief?.headline}</span>
          </li>
        ))}
      </ul>
      <p class="soft">
        A picture that lies in plain sight when you press the Hueward button is read from the screen.
      </p>
      {missing.length > 0 ? (
        <>
          <p class="soft">
            Some of them are kept on {missing.map(hostOf).join(", ")}, which this store’s grant does not name.
          </p>
          <Button onClick={() => void actions.switchOn([...granted, ...missing])}>
            Allow these pictures and reload the page
          </Button>
        </>
      ) : (
        <Button onClick={() => void actions.reloadPage()}>Reload the page and read again</Button>
      )}
    </details>
  );
}
