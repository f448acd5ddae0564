import { fstatSync, writeSync } from "node:fs";
import process from "node:process";
import { usesColours } from "./colours.js";

/** What a command has of the process it runs in; files it reaches itself. */
export interface Host {
  /** The working folder, absolute. */
  readonly folder: string;
  readonly colours: { readonly out: boolean; readonly err: boolean };
  readonly readStandardInput: () => Promise<Uint8Array>;
  /** Writes to standard output, waiting while the reader is slow. */
  readonly out: (chunks: Iterable<string | Uint8Array>) => Promise<void>;
  readonly err: (text: string) => void;
  /** Whether a person watches standard error: only then is progress told there. */
  readonly watched: boolean;
  /** The program of a worker thread; null to do everything in this one. */
  readonly worker: string | null;
  /** The folder of what is no program: the print font, and the rasteriser. */
  readonly assets: string;
}

const STANDARD_OUTPUT = 1;
const STANDARD_ERROR = 2;
/** Text is handed to standard output in parts of about this many characters. */
const PART = 1 << 16;
/** How long a slow reader is waited for before the next try, in milliseconds. */
const PAUSE = 2;

/**
 * The host of a real process. It writes to the descriptor itself: the stream `process.stdout` costs
 * a tenth of a check's whole start-up.
 */
export function processHost(worker: string | null, assets: string): Host {
  const watched = isTerminal(STANDARD_ERROR);
  return {
    folder: process.cwd(),
    colours: {
      out: usesColours(process.env, isTerminal(STANDARD_OUTPUT)),
      err: usesColours(process.env, watched),
    },
    readStandardInput: async () => {
      const parts: Buffer[] = [];
      for await (const part of process.stdin) parts.push(part as Buffer);
      return Buffer.concat(parts);
    },
    out: writeOut,
    err: writeError,
    watched,
    worker,
    assets,
  };
}

/** A terminal is a device of characters; only then is the stream asked, which knows it for sure. */
function isTerminal(descriptor: number): boolean {
  try {
    if (!fstatSync(descriptor).isCharacterDevice()) return false;
  } catch {
    return false;
  }
  return (descriptor === STANDARD_OUTPUT ? process.stdout : process.stderr).isTTY;
}

/** At once, since the process ends as soon as its work is done; what doesn't go through at once, by the stream. */
function writeError(text: string): void {
  try {
    const written = writeSync(STANDARD_ERROR, text);
    const bytes = Buffer.byteLength(text);
    if (written < bytes) process.stderr.write(Buffer.from(text).subarray(written));
  } catch (error) {
    if (hasCode(error, "EPIPE")) return;
    if (!hasCode(error, "EAGAIN")) throw error;
    process.stderr.write(text);
  }
}

/** Whoever reads the output (`| head`) may have seen enough: then the rest is dropped quietly. */
async function writeOut(chunks: Iterable<string | Uint8Array>): Promise<void> {
  for (const part of inParts(chunks)) {
    let rest = part;
    while (rest.length > 0) {
      try {
        rest = rest.subarray(writeSync(STANDARD_OUTPUT, rest));
      } catch (error) {
        if (hasCode(error, "EPIPE")) return;
        if (!hasCode(error, "EAGAIN")) throw error;
        await new Promise((resolve) => setTimeout(resolve, PAUSE));
      }
    }
  }
}

function hasCode(error: unknown, code: string): boolean {
  return error instanceof Error && "code" in error && error.code === code;
}

/** The same in bytes (texts as UTF-8), in parts of a useful size. */
export function* inParts(chunks: Iterable<string | Uint8Array>): Generator<Buffer> {
  let part = "";
  for (const chunk of chunks) {
    if (typeof chunk === "string") part += chunk;
    else {
      if (part !== "") yield Buffer.from(part);
      part = "";
      yield Buffer.from(chunk);
    }
    if (part.length < PART) continue;
    yield Buffer.from(part);
    part = "";
  }
  if (part !== "") yield Buffer.from(part);
}
