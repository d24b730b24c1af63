import "./switch-on.css";
import { Button } from "../button.tsx";
import type { PopupActions } from "./open-session.ts";
import { hostOf } from "./pick-image-origins.ts";

/** Hosts named in the sentence itself; the others follow in a list that can be opened. */
const NAMED = 3;

/** What the browser is about to ask for, and why. `once`: also offer to read just this page. */
export function SwitchOn({
  host,
  imageOrigins,
  actions,
  once = false,
}: {
  host: string;
  imageOrigins: readonly string[];
  actions: PopupActions;
  once?: boolean;
}) {
  return (
    <div class="switch-on">
      <div class="switch-on-way">
        <Button kind="strong" onClick={() => void actions.switchOn(imageOrigins)}>
          Switch on for {host}
        </Button>
        <GrantReason host={host} imageOrigins={imageOrigins} />
      </div>
      {once && (
        <div class="switch-on-way">
          <Button onClick={() => void actions.readPage()}>Just this page</Button>
          <p class="soft">Asks for nothing and ends with the page. Some pictures may stay unread.</p>
        </div>
      )}
    </div>
  );
}

function GrantReason({ host, imageOrigins }: { host: string; imageOrigins: readonly string[] }) {
  const hosts = imageOrigins.map(hostOf);
  const others = hosts.slice(NAMED);
  return (
    <div class="soft">
      <p>
        Your browser will ask whether Hueward may read the pages of <b>{host}</b>
        {hosts.length > 0 && (
          <>
            {" and the pictures on "}
            <HostNames hosts={hosts.slice(0, NAMED)} more={others.length} />
            {", where this page keeps them"}
          </>
        )}
        . It reads colours and marks the products; the store learns nothing of your closet.
      </p>
      {others.length > 0 && (
        <details>
          <summary>The other picture hosts</summary>
          <ul class="hosts">
            {others.map((name) => (
              <li key={name}>{name}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

function HostNames({ hosts, more }: { hosts: readonly string[]; more: number }) {
  const last = hosts.length - 1;
  return (
    <>
      {hosts.map((name, at) => (
        <span key={name}>
          {at > 0 && (at === last && more === 0 ? " and " : ", ")}
          <b>{name}</b>
        </span>
      ))}
      {more > 0 && ` and ${more} more`}
    </>
  );
}
