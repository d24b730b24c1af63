import * as v from "valibot";
import { contentId } from "./content-id.ts";
import { filePieceSchema } from "./file-piece.ts";
import type { Correction, Piece, Wish } from "./piece.ts";
import { correctionSchema, wishSchema } from "./schemas.ts";

/** The file format that this code writes and reads. */
const FILE_VERSION = 1;

/** Everything a person would miss. How they see colours stays out: a file is often passed on, and that is theirs to tell. */
export interface ClosetContents {
  readonly pieces: readonly Piece[];
  readonly wishes: readonly Wish[];
  readonly corrections: readonly Correction[];
}

/** What a file held, and a sentence for each entry that could not be used. */
export interface ReadCloset extends ClosetContents {
  readonly leftOut: readonly string[];
}

/** The whole file cannot be used; the message says what to do. */
export class ClosetFileError extends Error {
  override readonly name = "ClosetFileError";
}

/** The closet as JSON text; `now` in ms since 1970. */
export function writeClosetFile({ pieces, wishes, corrections }: ClosetContents, now: number): string {
  const savedAt = new Date(now).toISOString();
  return `${JSON.stringify({ hueward: FILE_VERSION, savedAt, pieces, wishes, corrections }, null, 1)}\n`;
}

/**
 * Reads what `writeClosetFile` wrote or a person wrote by hand; a piece needs only name, slot and swatches
 * (`hex` or `oklab`). Good entries are kept, others are named in `leftOut`. Pieces without a date get `now`.
 * Throws `ClosetFileError` when the text is no closet file at all.
 */
export function readClosetFile(text: string, now: number = Date.now()): ReadCloset {
  const file = parseFile(text);
  const leftOut: string[] = [];
  const keep = <T>(list: keyof ClosetContents, label: string, schema: v.GenericSchema<unknown, T>): T[] => {
    const entries = file[list] ?? [];
    if (!Array.isArray(entries)) {
      leftOut.push(`“${list}” was left out: it must be a list.`);
      return [];
    }
    return entries.flatMap((entry, index) => {
      const read = v.safeParse(schema, entry);
      if (read.success) return [read.output];
      leftOut.push(`${nameOf(entry, `${label} ${index + 1}`)} was left out. ${reasonOf(read.issues)}`);
      return [];
    });
  };
  const seen = new Map<string, number>();
  const pieces = keep("pieces", "Piece", filePieceSchema).map(({ id, addedAt = now, ...piece }): Piece => {
    if (id !== undefined) return { id, addedAt, ...piece };
    const first = contentId(piece, 0);
    const repeat = seen.get(first) ?? 0;
    seen.set(first, repeat + 1);
    return { id: repeat === 0 ? first : contentId(piece, repeat), addedAt, ...piece };
  });
  const wishes = keep("wishes", "Wish", wishSchema);
  const corrections = keep("corrections", "Correction", correctionSchema);
  return { pieces, wishes, corrections, leftOut };
}

function parseFile(text: string): Readonly<Record<string, unknown>> {
  let file: unknown;
  try {
    file = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    throw new ClosetFileError("This file is not valid JSON. Choose a file that Hueward exported.");
  }
  if (typeof file !== "object" || file === null || !("hueward" in file)) {
    throw new ClosetFileError(
      "This is no closet file: it does not begin with “hueward”. Choose a file that Hueward exported.",
    );
  }
  if (file.hueward === FILE_VERSION) return { ...file };
  if (typeof file.hueward === "number" && file.hueward > FILE_VERSION) {
    throw new ClosetFileError(
      "This file was written by a newer Hueward. Update the extension, then import it again.",
    );
  }
  throw new ClosetFileError("This file has an unknown version. The first entry must be “hueward”: 1.");
}

/** How to call an entry that cannot be used: by its name, where it has one. */
function nameOf(entry: unknown, fallback: string): string {
  if (typeof entry !== "object" || entry === null) return fallback;
  for (const name of ["name" in entry && entry.name, "title" in entry && entry.title]) {
    if (typeof name === "string" && name.trim() !== "") return `“${name.trim().slice(0, 80)}”`;
  }
  return fallback;
}

function reasonOf(issues: readonly { readonly message: string }[]): string {
  return issues[0]?.message ?? "";
}
