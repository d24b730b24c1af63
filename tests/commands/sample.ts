// `npm run --silent sample -- [--slot S] [--text T] FILE…` (or `-`: a JSON list on standard input, `[{file, slot?, text?}]`):
// one JSON line per picture, in order: the palette that the sampler finds in it.
import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { SLOTS, type Slot } from "../../lib/words/slot.ts";
import { ensureChromium } from "../browser/ensure-chromium.ts";
import { openPictureDesk, type PictureDesk } from "../sample/picture-desk.ts";
import { swatchLine } from "./swatch-line.ts";

interface Request {
  readonly file: string;
  readonly slot: Slot | null;
  readonly text: string;
}

const USAGE =
  "Usage: npm run --silent sample -- [--slot S] [--text T] FILE…   or   - with [{file, slot?, text?}] on standard input";

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function slotOf(value: unknown): Slot | null {
  if (value === undefined || value === null || value === "") return null;
  const slot = SLOTS.find((known) => known === value);
  if (slot) return slot;
  throw new Error(`There is no slot "${String(value)}". Slots: ${SLOTS.join(", ")}.`);
}

function requestOf(value: unknown): Request {
  const { file, slot, text } = Object(value) as Record<string, unknown>;
  if (typeof file !== "string" || !file) throw new Error("Every entry of the list needs a file.");
  if (text !== undefined && text !== null && typeof text !== "string") {
    throw new Error(`The text of ${file} is not a string.`);
  }
  return { file, slot: slotOf(slot), text: text ?? "" };
}

function readList(json: string): Request[] {
  let list: unknown;
  try {
    list = JSON.parse(json);
  } catch (error) {
    throw new Error(`Standard input is not JSON: ${messageOf(error)}`);
  }
  if (!Array.isArray(list)) throw new Error("Standard input must be a JSON list: [{file, slot?, text?}].");
  return list.map(requestOf);
}

function readRequests(): Request[] {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { slot: { type: "string" }, text: { type: "string" } },
  });
  if (positionals.length === 0) throw new Error(USAGE);
  if (positionals.includes("-")) {
    if (positionals.length > 1) throw new Error("Give either files or -, not both.");
    return readList(readFileSync(0, "utf8"));
  }
  return positionals.map((file) => requestOf({ file, slot: values.slot, text: values.text }));
}

/** Where a path that the person gave points: npm runs commands in the project's folder, not in theirs. */
const placeOf = (file: string): string => resolve(process.env.INIT_CWD ?? process.cwd(), file);

async function lineOf(
  desk: PictureDesk,
  { file, slot, text }: Request,
): Promise<{ line: object; read: boolean }> {
  try {
    if (!existsSync(placeOf(file))) throw new Error("There is no such file.");
    const { palette, ms } = await desk.sample(readFileSync(placeOf(file)), { slot, text });
    const { confidence, swatches, reason } = palette;
    const line = { file, confidence, swatches: swatches.map(swatchLine), ms, ...(reason && { reason }) };
    return { line, read: swatches.length > 0 };
  } catch (error) {
    const reason = messageOf(error);
    process.stderr.write(`${file}: ${reason}\n`);
    return { line: { file, confidence: 0, swatches: [], ms: 0, reason }, read: false };
  }
}

async function main(): Promise<void> {
  const requests = readRequests();
  ensureChromium();
  const desk = await openPictureDesk();
  try {
    for (const request of requests) {
      const { line, read } = await lineOf(desk, request);
      process.stdout.write(`${JSON.stringify(line)}\n`);
      if (!read) process.exitCode = 1;
    }
  } finally {
    await desk.close();
  }
}

main().catch((error: unknown) => {
  process.stderr.write(`${messageOf(error)}\n`);
  process.exitCode = 1;
});
