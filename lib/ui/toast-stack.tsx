import "./toast-stack.css";
import { useEffect, useRef, useState } from "preact/hooks";
import { Button } from "./button.tsx";
import type { Toast, Toasts } from "./use-toasts.ts";

/** How long a toast stays, ms. Long enough to read it and reach for undo; it waits while pointed at or focused. */
const SHOWN_FOR_MS = 10_000;

/**
 * Toasts at the foot of the page, in a live region that is always there so that each is announced. A toast that is left
 * by keyboard hands the focus to the page's `main` (give it `tabIndex={-1}`).
 */
export function ToastStack({ toasts, dismiss }: Pick<Toasts, "toasts" | "dismiss">) {
  return (
    <div class="toasts" role="status" aria-live="polite">
      {toasts.map((toast) => (
        <ToastLine key={toast.id} toast={toast} close={() => dismiss(toast.id)} />
      ))}
    </div>
  );
}

function ToastLine({ toast, close }: { toast: Toast; close: () => void }) {
  const [held, setHeld] = useState(false);
  const line = useRef<HTMLDivElement>(null);
  const leave = () => {
    if (line.current?.contains(document.activeElement)) document.querySelector("main")?.focus();
    close();
  };
  useEffect(() => {
    // What was removed took the focus with it: undo is then one key away. A focus elsewhere is left alone.
    if (document.activeElement !== document.body) return;
    const next = toast.action ? line.current?.querySelector("button") : document.querySelector("main");
    next?.focus({ preventScroll: true });
  }, [toast]);
  useEffect(() => {
    if (held) return;
    const timer = setTimeout(close, SHOWN_FOR_MS);
    return () => clearTimeout(timer);
  }, [held, toast.id]);
  return (
    <div
      class="toast"
      ref={line}
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocusIn={() => setHeld(true)}
      onFocusOut={() => setHeld(false)}
    >
      <p>{toast.text}</p>
      {toast.action && (
        <Button
          onClick={() => {
            toast.action?.run();
            leave();
          }}
        >
          {toast.action.label}
        </Button>
      )}
      <Button kind="quiet" onClick={leave}>
        Close
      </Button>
    </div>
  );
}
