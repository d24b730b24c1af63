import "./sheet.css";
import type { ComponentChildren } from "preact";
import { useId, useLayoutEffect, useRef } from "preact/hooks";
import { Button } from "../button.tsx";

/**
 * A dialog over the page; Escape closes it. The browser keeps the focus inside and gives it back, if the dialog is closed
 * before it is taken out of the page: so a layout effect, whose end comes first.
 */
export function Sheet({
  title,
  onClose,
  children,
}: {
  title: string;
  onClose: () => void;
  children: ComponentChildren;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useLayoutEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog
      class="sheet"
      ref={dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <div class="sheet-head">
        <h2 id={titleId}>{title}</h2>
        <Button kind="quiet" onClick={onClose}>
          Close
        </Button>
      </div>
      {children}
    </dialog>
  );
}
