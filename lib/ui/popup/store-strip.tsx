import { Button } from "../button.tsx";
import { countOf } from "../words.ts";
import type { PopupActions } from "./open-session.ts";
import { hostOf } from "./pick-image-origins.ts";
import type { PopupFacts } from "./popup-state.ts";
import { SwitchOn } from "./switch-on.tsx";

/** Whether this store is read, what it was granted, and the way out in one click. */
export function StoreStrip({
  facts: { grant, script, imageOrigins },
  host,
  actions,
}: {
  facts: PopupFacts;
  host: string;
  actions: PopupActions;
}) {
  if (grant) {
    return (
      <section class="store-strip" aria-label="This store">
        <details>
          <summary>
            <b>{host}</b> is on
          </summary>
          <p class="soft">Granted: its pages and {countOf(grant.imageOrigins.length, "picture host")}.</p>
          <ul class="hosts soft">
            {[host, ...grant.imageOrigins.map(hostOf)].map((name) => (
              <li key={name}>{name}</li>
            ))}
          </ul>
        </details>
        <Button onClick={() => void actions.switchOff()}>Switch off</Button>
      </section>
    );
  }
  if (script !== "running") return null;
  return (
    <section class="store-strip" aria-label="This store">
      <details>
        <summary>
          <b>{host}</b>, just this page
        </summary>
        <SwitchOn host={host} imageOrigins={imageOrigins} actions={actions} />
      </details>
      <Button onClick={() => void actions.switchOff()}>Stop</Button>
    </section>
  );
}
