import process from "node:process";
import { usesColours } from "./colours.js";

/** What a command has of the process it runs in; files it reaches itself. */
export interface Host {
  /** The working folder, absolute. */
  readonly folder: string;
  readonly colours: { readonly out: boolean; readonly err: boolean };
  readonly readStandardInput: () => Promise<Uint8Array>;
  /** Writes to standard output, waiting while the reader is slow. */
  readonly out: (chunks: Iterable<string>) => Promise<void>;
  readonly err: (text: string) => void;
}

/** Text is handed to standard output in parts of about this many characters. */
const PART = 1 << 16;

/** The host of a real process. */
export function processHost(): Host {
  return {
    folder: process.cwd(),
    colours: {
      out: usesColours(process.env, process.stdout.isTTY),
      err: usesColours(process.env, process.stderr.isTTY),
    },
    readStandardInput: async () => {
      const parts: Buffer[] = [];
      for await (const part of process.stdin) parts.push(part as Buffer);
      return Buffer.concat(parts);
    },
    out: writeOut,
    err: (text) => void process.stderr.write(text),
  };
}

async function writeOut(chunks: Iterable<string>): Promise<void> {
  for (const part of inParts(chunks)) {
    if (!process.stdout.writable) return;
    await new Promise<void>((resolve, reject) => {
      process.stdout.write(part, (error) => {
        if (error && !isClosedPipe(error)) reject(error);
        else resolve();
      });
    });
  }
}

/** Whoever reads the output (`| head`) has seen enough: no fault of this run. */
export function isClosedPipe(error: unknown): boolean {
  return error instanceof Error && "code" in error && error.code === "EPIPE";
}

/** The same text in parts of a useful size. */
export function* inParts(chunks: Iterable<string>): Generator<string> {
  let part = "";
  for (const chunk of chunks) {
    part += chunk;
    if (part.length < PART) continue;
    yield part;
    part = "";
  }
  if (part !== "") yield part;
}
