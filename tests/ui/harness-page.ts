import { fileURLToPath } from "node:url";
import { build } from "vite";

/** One HTML page with the harness and its styles inside; `Harness.show(count, wished)` draws the closet page. */
export async function harnessPage(): Promise<string> {
  const entry = fileURLToPath(new URL("harness.tsx", import.meta.url));
  const output = await build({
    configFile: false,
    logLevel: "error",
    define: { "process.env.NODE_ENV": '"production"' },
    build: {
      write: false,
      target: "esnext",
      lib: { entry, name: "Harness", formats: ["iife"] },
    },
  });
  const first = Array.isArray(output) ? output[0] : output;
  if (!first || !("output" in first)) throw new Error(`Nothing was built from ${entry}.`);
  const css = first.output.flatMap((file) => (file.type === "asset" ? [String(file.source)] : [])).join("\n");
  const code = first.output.flatMap((file) => (file.type === "chunk" ? [file.code] : [])).join("\n");
  return `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Hueward: your closet</title>
<meta name="viewport" content="width=device-width, initial-scale=1"><style>${css}</style></head><body><script>${code.replaceAll("</script", "<\\/script")}</script></body></html>`;
}
