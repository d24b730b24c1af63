import { useLayoutEffect, useRef } from "preact/hooks";

/** Escape anywhere on the page, before the dialog hears it; from the first frame on, since the next key may come at once. */
export function useEscape(leave: () => void): void {
  const latest = useRef(leave);
  latest.current = leave;
  useLayoutEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      event.preventDefault();
      event.stopPropagation();
      latest.current();
    };
    document.addEventListener("keydown", listen, true);
    return () => document.removeEventListener("keydown", listen, true);
  }, []);
}
