/** A visit that runs in this world, as a later injection of the script finds it. */
interface RunningVisit {
  /** False once the extension that began it was updated or removed. */
  readonly alive: () => boolean;
  readonly end: AbortController;
}

/** Where the running visit hangs: the extension's own isolated world, which no page reaches. */
const KEY = Symbol.for("hueward visit");

const world = globalThis as typeof globalThis & { [KEY]?: RunningVisit };

/**
 * The controller that ends the visit about to begin; null when one is already running. The script may be injected
 * twice, by its registration and by the popup; and after an update the old visit is dead and gives way.
 */
export function oneVisit(alive: () => boolean): AbortController | null {
  const running = world[KEY];
  if (running && !running.end.signal.aborted) {
    if (running.alive()) return null;
    running.end.abort();
  }
  const end = new AbortController();
  world[KEY] = { alive, end };
  return end;
}
