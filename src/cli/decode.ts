import type { Diagnostic } from "../model/index.js";
import { Failure } from "./failure.js";

/** A file's text, and what was wrong with its bytes. */
export interface Decoded {
  readonly text: string;
  readonly diagnostics: readonly Diagnostic[];
}

/** A plan larger than this is no plan (16 MB): refused before it is read as one. */
export const LARGEST_FILE = 16 * 1024 * 1024;

/**
 * Reads bytes as UTF-8, with or without a byte order mark. Bytes that are none become U+FFFD and are
 * told at the first one's place, so that a stray letter in a comment doesn't cost the plan.
 * Throws a Failure for what is no text at all.
 */
export function decode(file: string, bytes: Uint8Array): Decoded {
  if (bytes.length > LARGEST_FILE) {
    throw new Failure(`${megabytes(bytes.length)} is too large for a plan`, "the limit is 16 MB");
  }
  if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff)) {
    throw new Failure("it is UTF-16 text", "save it as UTF-8");
  }
  if (bytes.includes(0)) throw new Failure("it is not a text (it holds zero bytes)");
  const text = new TextDecoder("utf-8").decode(bytes);
  const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  const stray = strayByte(file, text, bytes.subarray(mark));
  return { text, diagnostics: stray ? [stray] : [] };
}

function startsWith(bytes: Uint8Array, first: number, second: number): boolean {
  return bytes[0] === first && bytes[1] === second;
}

function megabytes(bytes: number): string {
  return `${(bytes / (1024 * 1024)).toFixed(1)} MB`;
}

/** The first byte that is no UTF-8: where the text, written back, differs from what was read. */
function strayByte(file: string, text: string, bytes: Uint8Array): Diagnostic | null {
  const written = new TextEncoder().encode(text);
  if (Buffer.compare(written, bytes) === 0) return null;
  let place = 0;
  while (written[place] === bytes[place]) place++;
  // U+FFFD was written there, and may begin as the stray bytes do.
  while ((written[place]! & 0xc0) === 0x80) place--;
  const before = new TextDecoder("utf-8", { ignoreBOM: true }).decode(written.subarray(0, place));
  const lines = before.split(/\r\n|\r|\n/);
  const start = { line: lines.length - 1, character: lines.at(-1)!.length };
  const found = `0x${bytes[place]!.toString(16).toUpperCase().padStart(2, "0")}`;
  return {
    code: "text/encoding",
    severity: "error",
    message: `the byte ${found} is no UTF-8 text: save the file as UTF-8`,
    file,
    range: { start, end: { line: start.line, character: start.character + 1 } },
  };
}
