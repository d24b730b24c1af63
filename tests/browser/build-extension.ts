import { spawnSync } from "node:child_process";

/** Builds the extension for Chromium into `.output/chrome-mv3`. Throws with the builder's words where it fails. */
export function buildExtension(): void {
  const built = spawnSync(process.execPath, ["node_modules/wxt/bin/wxt.mjs", "build"], { encoding: "utf8" });
  if (built.status !== 0)
    throw new Error(`The extension could not be built:\n${built.stdout}${built.stderr}`);
}
