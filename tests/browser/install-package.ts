import { spawnSync } from "node:child_process";

/** Says a line where it does not mix with what a command prints. */
export const say = (line: string) => process.stderr.write(`${line}\n`);

/** Runs a program to its end, all it prints on stderr; true where it succeeded. */
export function run(program: string, args: readonly string[], env: Readonly<Record<string, string>> = {}) {
  const done = spawnSync(program, args, {
    stdio: ["ignore", process.stderr, process.stderr],
    env: { ...process.env, ...env },
  });
  return done.status === 0;
}

/** Installs one of Debian's packages where that is allowed; whether it worked, the caller sees by looking again. */
export function installPackage(name: string): void {
  if (process.getuid?.() !== 0) return;
  say(`Installing Debian's ${name} package.`);
  const quiet = { DEBIAN_FRONTEND: "noninteractive" };
  run("apt-get", ["update", "-qq"], quiet);
  run("apt-get", ["install", "-y", "-qq", name], quiet);
}
