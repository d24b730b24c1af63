import type { Bidi } from "./bidi.ts";

/** A part of the page inside a closed shadow root, as only the browser's own protocol shows it. */
export interface FirefoxNode {
  /** The protocol's name for it. */
  readonly sharedId: string;
  readonly tag: string;
  /** Attributes by name. */
  readonly attributes: Readonly<Record<string, string>>;
  /** All text below it, white space folded. */
  readonly text: string;
}

/** A tab of a Firefox. */
export interface FirefoxPage {
  /** Goes there and waits until it has loaded; "none": until the browser set out, since it never tells of its own pages. */
  goto(url: string, wait?: "complete" | "none"): Promise<void>;
  reload(): Promise<void>;
  /** The JSON value of an expression, awaited, in the page's own world. */
  evaluate<T>(expression: string): Promise<T>;
  url(): Promise<string>;
  /** Every element in a closed shadow root, in document order. */
  all(): Promise<readonly FirefoxNode[]>;
  /** The buttons among them. */
  buttons(): Promise<readonly FirefoxNode[]>;
  /** Scrolls there and clicks its middle with a real mouse; a node, or the element an expression gives. */
  click(target: FirefoxNode | string): Promise<void>;
  press(key: string): Promise<void>;
  setFile(input: string, file: string): Promise<void>;
  bringToFront(): Promise<void>;
  screenshot(): Promise<Buffer>;
}

interface RemoteNode {
  readonly sharedId?: string;
  readonly value?: {
    readonly nodeType: number;
    readonly nodeValue?: string;
    readonly localName?: string;
    readonly attributes?: Record<string, string>;
    readonly children?: readonly RemoteNode[];
    readonly mode?: "open" | "closed";
    readonly shadowRoot?: RemoteNode | null;
  };
}

interface Evaluated {
  readonly type: "success" | "exception";
  readonly result?: RemoteNode & { readonly value?: unknown };
  readonly exceptionDetails?: { readonly text: string };
}

/** A world of the driver's own in the page, in which its scripts meet nothing that the page has changed. */
const SANDBOX = "test-driver";

/** Keys by the names that WebDriver gives them (W3C WebDriver, table of normalised key values). */
const KEYS: Readonly<Record<string, string>> = { Escape: "\uE00C", Enter: "\uE007", Tab: "\uE004" };

const insideOf = ({ value }: RemoteNode): readonly RemoteNode[] => [
  ...(value?.children ?? []),
  ...(value?.shadowRoot ? [value.shadowRoot] : []),
];

/** The label of a button that says it deeper inside. */
function labelIn(node: RemoteNode): Record<string, string> {
  const [label] = insideOf(node).flatMap(
    (inner) => inner.value?.attributes?.["aria-label"] ?? labelIn(inner)["aria-label"] ?? [],
  );
  return label === undefined ? {} : { "aria-label": label };
}

function textOf(node: RemoteNode): string {
  const { value } = node;
  const own = value?.nodeType === 3 ? (value.nodeValue ?? "") : "";
  return [own, ...insideOf(node).map(textOf)].join(" ").replace(/\s+/g, " ").trim();
}

function collect(node: RemoteNode, hidden: boolean, found: FirefoxNode[]): void {
  const { sharedId, value } = node;
  if (hidden && sharedId && value?.localName) {
    const label = value.localName === "button" ? labelIn(node) : {};
    found.push({
      sharedId,
      tag: value.localName,
      attributes: { ...label, ...value.attributes },
      text: textOf(node),
    });
  }
  for (const child of value?.children ?? []) collect(child, hidden, found);
  if (value?.shadowRoot) collect(value.shadowRoot, value.shadowRoot.value?.mode === "closed", found);
}

/** Evaluates an expression where `target` says; throws with the page's own words where that fails. */
async function evaluateIn(bidi: Bidi, target: object, expression: string, options: object = {}) {
  const answer = await bidi.send<Evaluated>("script.evaluate", {
    expression,
    target,
    awaitPromise: true,
    serializationOptions: options,
  });
  if (answer.type === "exception") throw new Error(answer.exceptionDetails?.text);
  return answer.result;
}

/** The JSON value of an expression, awaited. */
export async function jsonOf<T>(bidi: Bidi, target: object, expression: string): Promise<T> {
  const told = await evaluateIn(bidi, target, `(async () => JSON.stringify(await (${expression})))()`);
  return (typeof told?.value === "string" ? JSON.parse(told.value) : undefined) as T;
}

/** The tab with this id, driven by the protocol. */
export function firefoxPage(bidi: Bidi, context: string): FirefoxPage {
  const element = async (expression: string) => {
    const found = await evaluateIn(bidi, { context, sandbox: SANDBOX }, expression);
    if (!found?.sharedId) throw new Error(`There is no ${expression}.`);
    return { sharedId: found.sharedId };
  };
  const all = async () => {
    const root = await evaluateIn(bidi, { context, sandbox: SANDBOX }, "document.documentElement", {
      includeShadowTree: "all",
      maxDomDepth: null,
    });
    const found: FirefoxNode[] = [];
    if (root) collect(root as RemoteNode, false, found);
    return found;
  };
  const perform = (...actions: object[]) => bidi.send("input.performActions", { context, actions });
  return {
    goto: async (url, wait = "complete") => {
      await bidi.send("browsingContext.navigate", { context, url, wait });
    },
    reload: async () => {
      await bidi.send("browsingContext.reload", { context, wait: "complete" });
    },
    evaluate: (expression) => jsonOf(bidi, { context }, expression),
    url: () => jsonOf(bidi, { context, sandbox: SANDBOX }, "document.URL"),
    all,
    buttons: async () => (await all()).filter(({ tag }) => tag === "button"),
    click: async (target) => {
      const { sharedId } = typeof target === "string" ? await element(target) : target;
      await bidi.send("script.callFunction", {
        functionDeclaration: `(element) => element.scrollIntoView({ block: "center", behavior: "instant" })`,
        arguments: [{ sharedId }],
        target: { context, sandbox: SANDBOX },
        awaitPromise: false,
      });
      const origin = { type: "element", element: { sharedId } };
      const actions = [
        { type: "pointerMove", x: 0, y: 0, origin },
        { type: "pointerDown", button: 0 },
        { type: "pointerUp", button: 0 },
      ];
      await perform({ type: "pointer", id: "mouse", actions });
    },
    press: async (key) => {
      const value = KEYS[key] ?? key;
      const actions = [
        { type: "keyDown", value },
        { type: "keyUp", value },
      ];
      await perform({ type: "key", id: "keyboard", actions });
    },
    setFile: async (input, file) => {
      await bidi.send("input.setFiles", { context, element: await element(input), files: [file] });
    },
    bringToFront: async () => {
      await bidi.send("browsingContext.activate", { context });
    },
    screenshot: async () => {
      const { data } = await bidi.send<{ data: string }>("browsingContext.captureScreenshot", { context });
      return Buffer.from(data, "base64");
    },
  };
}
