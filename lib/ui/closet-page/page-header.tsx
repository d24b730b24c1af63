import { Button } from "../button.tsx";
import type { View } from "./use-view.ts";

/** The name, the two views, and the ways to add a piece. */
export function PageHeader({
  view,
  pieces,
  wishes,
  onAdd,
  onPhotos,
}: {
  view: View;
  pieces: number;
  wishes: number;
  onAdd: () => void;
  onPhotos: () => void;
}) {
  return (
    <header class="page-header">
      <h1>Hueward</h1>
      <nav aria-label="Views">
        <ul class="views">
          <ViewLink to="closet" label="Closet" count={pieces} current={view} />
          <ViewLink to="wishlist" label="Wishlist" count={wishes} current={view} />
        </ul>
      </nav>
      <div class="page-actions">
        <Button kind="strong" onClick={onAdd}>
          Add a piece
        </Button>
        <Button onClick={onPhotos}>Add from photos</Button>
      </div>
    </header>
  );
}

function ViewLink({ to, label, count, current }: { to: View; label: string; count: number; current: View }) {
  return (
    <li>
      <a class="view-link" href={`#${to}`} {...(to === current && { "aria-current": "page" })}>
        {label} <span class="soft small">{count}</span>
      </a>
    </li>
  );
}
