// Runs a command of this project on any machine that has Node and npm: installs the locked packages where they are
// missing or stale, then hands over to the pinned Node, which reads TypeScript as it is. Plain JavaScript, because an
// older Node may be the one that starts it.
import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const windows = process.platform === "win32";
const [command, ...rest] = process.argv.slice(2);

/** Node's first version that reads TypeScript without a package. */
const NODE_MIN = [22, 12];

function run(program, args, stdout) {
  const options = { cwd: root, stdio: ["inherit", stdout, "inherit"], shell: windows };
  return spawnSync(program, args, options).status ?? 1;
}

function installPackages() {
  const installed = join(root, "node_modules", ".package-lock.json");
  const wanted = join(root, "package-lock.json");
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(wanted).mtimeMs) return;
  process.stderr.write("Installing the packages this project is locked to; about a minute the first time.\n");
  const status = run("npm", ["ci", "--loglevel=error", "--no-audit", "--no-fund"], process.stderr);
  if (status !== 0) {
    process.stderr.write(
      "The packages could not be installed. Check the network, then run the command again.\n",
    );
    process.exit(status);
  }
}

function nodeProgram() {
  const pinned = join(root, "node_modules", ".bin", windows ? "node.cmd" : "node");
  if (existsSync(pinned)) return pinned;
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major > NODE_MIN[0] || (major === NODE_MIN[0] && minor >= NODE_MIN[1])) return process.execPath;
  process.stderr.write(
    `Node ${NODE_MIN.join(".")} or newer is needed here; this is ${process.versions.node}.\n`,
  );
  process.exit(1);
}

function writeTypes() {
  if (existsSync(join(root, ".wxt", "tsconfig.json"))) return;
  const status = run(
    nodeProgram(),
    [join("node_modules", "wxt", "bin", "wxt.mjs"), "prepare"],
    process.stderr,
  );
  if (status !== 0) process.exit(status);
}

installPackages();
writeTypes();
const script = join("tests", "commands", `${command}.ts`);
if (!existsSync(join(root, script))) {
  process.stderr.write(`There is no command "${command}". See "scripts" in package.json.\n`);
  process.exit(1);
}
const flags = ["--experimental-strip-types", "--disable-warning=ExperimentalWarning"];
process.exit(run(nodeProgram(), [...flags, script, ...rest], "inherit"));
