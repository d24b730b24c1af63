import { useCallback, useRef, useState } from "preact/hooks";

/** A short word on what just happened, with at most one way back. */
export interface Toast {
  readonly id: number;
  readonly text: string;
  /** What takes it back, and its label. */
  readonly action?: { readonly label: string; readonly run: () => void };
}

export interface Toasts {
  readonly toasts: readonly Toast[];
  /** Show a toast; the same words replace an older toast, so that they do not pile up. */
  readonly say: (text: string, action?: Toast["action"]) => void;
  readonly dismiss: (id: number) => void;
}

/** Toasts shown at once; older ones go first. */
const MOST_AT_ONCE = 3;

/** The toasts of one page; draw them once with `ToastStack`. */
export function useToasts(): Toasts {
  const [toasts, setToasts] = useState<readonly Toast[]>([]);
  const lastId = useRef(0);
  const say = useCallback((text: string, action?: Toast["action"]) => {
    lastId.current += 1;
    const toast: Toast = { id: lastId.current, text, ...(action && { action }) };
    setToasts((before) => [...before.filter((other) => other.text !== text), toast].slice(-MOST_AT_ONCE));
  }, []);
  const dismiss = useCallback((id: number) => {
    setToasts((before) => before.filter((toast) => toast.id !== id));
  }, []);
  return { toasts, say, dismiss };
}
