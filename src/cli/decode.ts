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
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), diagnostics: [] };
  } catch {
    const text = new TextDecoder("utf-8").decode(bytes);
    const place = firstStrayByte(bytes);
    return { text, diagnostics: [strayByte(file, text, bytes[place]!, text.indexOf("\ufffd"))] };
  }
}

function startsWith(bytes: Uint8Array, first: number, second: number): boolean {
  return bytes[0] === first && bytes[1] === second;
}

function megabytes(bytes: number): string {
  return `${(bytes / (1024 * 1024)).toFixed(1)} MB`;
}

/** Where the first byte stands that is no UTF-8, found by halving. */
function firstStrayByte(bytes: Uint8Array): number {
  let sound = 0;
  let stray = bytes.length;
  while (stray - sound > 1) {
    const middle = (sound + stray) >> 1;
    if (isSoundStart(bytes.subarray(0, middle))) sound = middle;
    else stray = middle;
  }
  return sound;
}

/** Whether the bytes are UTF-8 so far; a character that is cut off at the end doesn't count. */
function isSoundStart(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}

function strayByte(file: string, text: string, byte: number, offset: number): Diagnostic {
  const before = text.slice(0, offset).split(/\r\n|\r|\n/);
  const start = { line: before.length - 1, character: before.at(-1)!.length };
  const found = `0x${byte.toString(16).toUpperCase().padStart(2, "0")}`;
  return {
    code: "text/encoding",
    severity: "error",
    message: `the byte ${found} is no UTF-8 text: save the file as UTF-8`,
    file,
    range: { start, end: { line: start.line, character: start.character + 1 } },
  };
}
