// `npm test`: lint, types, unit tests, builds, real-browser tests. The last line is "N passed, N failed".
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import * as v from "valibot";
import { ensureChromium } from "../browser/ensure-chromium.ts";
import { ensureFirefox } from "../browser/ensure-firefox.ts";

const REPORT = ".output/test-report.json";
const reportSchema = v.object({
  numPassedTests: v.number(),
  numFailedTests: v.number(),
  success: v.boolean(),
});

interface Count {
  passed: number;
  failed: number;
}

/** One program of ours run on the pinned Node; a step that is right or wrong as a whole. */
function step(name: string, script: string, ...args: string[]): Count {
  process.stdout.write(`\n${name}\n`);
  const done = spawnSync(process.execPath, [script, ...args], { stdio: "inherit" });
  return done.status === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** One vitest project, counted by its own report; a run that breaks off counts as one failure. */
function tests(project: string): Count {
  process.stdout.write(`\n${project} tests\n`);
  rmSync(REPORT, { force: true });
  const args = ["run", "-c", "tests/config/vitest.config.ts", "--project", project];
  spawnSync(
    process.execPath,
    [
      "node_modules/vitest/vitest.mjs",
      ...args,
      "--reporter=default",
      "--reporter=json",
      `--outputFile.json=${REPORT}`,
    ],
    { stdio: "inherit" },
  );
  try {
    const report = v.parse(reportSchema, JSON.parse(readFileSync(REPORT, "utf8")));
    const broken = !report.success && report.numFailedTests === 0 ? 1 : 0;
    return { passed: report.numPassedTests, failed: report.numFailedTests + broken };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

/** Whether there is a Firefox; without one its tests fail below, and the rest still tells what it can. */
function firefox(): Count {
  process.stdout.write("\nA Firefox for its tests\n");
  try {
    process.stdout.write(`${ensureFirefox()}\n`);
    return { passed: 1, failed: 0 };
  } catch (error) {
    process.stdout.write(`${error instanceof Error ? error.message : error} Its tests cannot run.\n`);
    return { passed: 0, failed: 1 };
  }
}

mkdirSync(".output", { recursive: true });
ensureChromium();
const counts = [
  firefox(),
  step("Lint and format", "node_modules/@biomejs/biome/bin/biome", "check", "--error-on-warnings", "."),
  step("Types", "node_modules/typescript/bin/tsc", "-p", "tsconfig.json"),
  step("Types without a browser", "node_modules/typescript/bin/tsc", "-p", "tests/config/tsconfig.pure.json"),
  tests("unit"),
  step("Build for Chromium", "node_modules/wxt/bin/wxt.mjs", "build"),
  step("Build for Firefox", "node_modules/wxt/bin/wxt.mjs", "build", "-b", "firefox"),
  step(
    "Firefox's linter",
    "node_modules/addons-linter/bin/addons-linter",
    "--warnings-as-errors",
    ".output/firefox-mv3",
  ),
  tests("browser"),
];
const total = counts.reduce((sum, { passed, failed }) => ({
  passed: sum.passed + passed,
  failed: sum.failed + failed,
}));
process.stdout.write(`\n${total.passed} passed, ${total.failed} failed\n`);
process.exitCode = total.failed === 0 ? 0 : 1;
