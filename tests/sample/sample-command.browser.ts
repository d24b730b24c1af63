import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pngOf } from "../pixels/png-of.ts";

const SCRIPT = fileURLToPath(new URL("../commands/sample.ts", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "hueward-sample-"));
const picture = join(folder, "dress.webp@v=1&width=360");

beforeAll(() => {
  const dress = (x: number, y: number) => x > 24 && x < 72 && y > 20 && y < 76;
  writeFileSync(
    picture,
    pngOf(96, 96, (x, y) => (dress(x, y) ? [31, 40, 74, 255] : [240, 240, 240, 255])),
  );
  writeFileSync(join(folder, "words.jpg"), "no picture at all");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function sample(
  args: readonly string[],
  input = "",
): Promise<{ code: number; lines: unknown[]; stderr: string }> {
  return new Promise((done) => {
    const child = execFile(process.execPath, [SCRIPT, ...args], (error, stdout, stderr) => {
      const lines = stdout
        .split("\n")
        .filter(Boolean)
        .map((line) => JSON.parse(line) as unknown);
      done({ code: typeof error?.code === "number" ? error.code : 0, lines, stderr });
    });
    child.stdin?.end(input);
  });
}

describe("npm run sample", () => {
  it("prints the palette of a picture whatever it is called", async () => {
    const { code, lines } = await sample(["--slot", "one-piece", "--text", "Navy dress", picture]);
    expect(code).toBe(0);
    expect(lines).toEqual([
      {
        file: picture,
        confidence: expect.any(Number),
        swatches: [
          {
            hex: expect.stringMatching(/^#[12][0-9a-f][23][0-9a-f]4[0-9a-f]$/),
            oklab: [expect.any(Number), expect.any(Number), expect.any(Number)],
            share: 1,
            name: expect.any(String),
            level: expect.any(String),
          },
        ],
        ms: expect.any(Number),
      },
    ]);
  });

  it("reads a list, keeps its order, and tells what it could not read", async () => {
    const list = [
      { file: join(folder, "words.jpg") },
      { file: picture, slot: "one-piece" },
      { file: join(folder, "gone.png") },
    ];
    const { code, lines, stderr } = await sample(["-"], JSON.stringify(list));
    expect(code).toBe(1);
    expect(lines).toMatchObject([
      { file: list[0]?.file, confidence: 0, swatches: [], reason: "The browser cannot read this picture." },
      { file: picture, swatches: [{ share: 1 }] },
      { file: list[2]?.file, confidence: 0, swatches: [], reason: "There is no such file." },
    ]);
    expect(stderr).toContain("gone.png: There is no such file.");
  });

  it.each([
    ["an unknown slot", ["--slot", "hat", picture], "", 'There is no slot "hat"'],
    ["nothing to do", [], "", "Usage"],
    ["a broken list", ["-"], "[{", "not JSON"],
    ["a list of something else", ["-"], '[{"name": "x"}]', "needs a file"],
  ])("refuses %s in one sentence", async (_, args, input, words) => {
    const { code, lines, stderr } = await sample(args, input);
    expect(code).toBe(1);
    expect(lines).toEqual([]);
    expect(stderr).toContain(words);
  });
});
