import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** `unit`: pure and happy-dom tests, one process. `browser`: real Chromium and Firefox, one file at a time. */
export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
          isolate: false,
          // For what never ends; a busy machine may take long over hundreds of tiles.
          testTimeout: 60_000,
        },
      },
      {
        root,
        test: {
          name: "browser",
          include: ["tests/**/*.browser.ts"],
          fileParallelism: false,
          // A real browser on a busy machine may miss a step; what fails twice has failed.
          retry: 1,
          testTimeout: 120_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
