import "./button.css";
import type { ButtonHTMLAttributes, ComponentChildren } from "preact";

/** `strong`: the one thing this screen is for; `plain`: the others; `quiet`: beside a text. */
export type ButtonKind = "strong" | "plain" | "quiet";

/** A button that never submits a form unless its `type` says so. */
export function Button({
  kind = "plain",
  children,
  ...rest
}: { kind?: ButtonKind; children: ComponentChildren } & Omit<
  ButtonHTMLAttributes<HTMLButtonElement>,
  "class"
>) {
  return (
    <button type="button" {...rest} class={`button button-${kind}`}>
      {children}
    </button>
  );
}
