import { build } from "vite";

/**
 * One self-running script made of `entry` and all it imports, for a page of a real browser.
 * Its exports hang on the global `name`.
 */
export async function bundle(entry: string, name: string): Promise<string> {
  const output = await build({
    configFile: false,
    logLevel: "error",
    build: { write: false, minify: false, target: "esnext", lib: { entry, name, formats: ["iife"] } },
  });
  const first = Array.isArray(output) ? output[0] : output;
  if (!first || !("output" in first)) throw new Error(`Nothing was built from ${entry}.`);
  return first.output[0].code;
}
