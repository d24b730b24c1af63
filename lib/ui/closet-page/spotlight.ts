import { createContext } from "preact";
import { useContext, useEffect, useState } from "preact/hooks";

/**
 * Which piece is pointed at. It changes with every move of the pointer, so only the card and the dot that gain or lose
 * the light are drawn again, never the other hundreds.
 */
export interface Spotlight {
  readonly current: () => string | null;
  readonly shine: (id: string | null) => void;
  readonly watch: (listener: () => void) => () => void;
}

/** A spotlight that is off. */
export function createSpotlight(): Spotlight {
  let lit: string | null = null;
  const listeners = new Set<() => void>();
  return {
    current: () => lit,
    shine(id) {
      if (id === lit) return;
      lit = id;
      for (const listener of listeners) listener();
    },
    watch(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

export const SpotlightContext = createContext<Spotlight>(createSpotlight());

/** What `read` sees in the page's spotlight; the caller is drawn again only when that answer changes. */
export function useSpotlight<T>(read: (lit: string | null) => T): T {
  const light = useContext(SpotlightContext);
  const [seen, setSeen] = useState(() => read(light.current()));
  useEffect(() => {
    const look = () => setSeen(() => read(light.current()));
    look();
    return light.watch(look);
  }, [light, read]);
  return seen;
}

/** The whole answer: the id that is lit. */
export function whatIsLit(lit: string | null): string | null {
  return lit;
}
