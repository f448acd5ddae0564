import {
  closeSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import path from "node:path";
import process from "node:process";
import { Failure, systemReason } from "./failure.js";
import { inParts } from "./host.js";

/**
 * Writes a file whole or not at all: into a file beside it, which then takes its name. When that
 * fails the old file stands untouched and nothing is left behind. `shown` is the file's name for
 * people. Throws a Failure.
 */
export function writeWhole(
  file: string,
  shown: string,
  chunks: Iterable<string | Uint8Array>,
): void {
  try {
    const old = statSync(file, { throwIfNoEntry: false });
    if (old?.isDirectory()) throw new Failure("it is a folder");
    // A device or a pipe (`/dev/null`) can't be replaced, only written to.
    if (old && !old.isFile()) writeFileSync(file, Buffer.concat([...inParts(chunks)]));
    // Through a link, so that the link stays one.
    else replace(old ? realpathSync(file) : file, old?.mode ?? 0o666, chunks);
  } catch (error) {
    const reason = error instanceof Failure ? error.message : systemReason(error);
    throw new Failure(`${shown} could not be written: ${reason}`);
  }
}

function replace(file: string, mode: number, chunks: Iterable<string | Uint8Array>): void {
  const beside = path.join(path.dirname(file), `.${path.basename(file)}.${process.pid}.part`);
  // `wx`: never over a file that is there.
  const opened = openSync(beside, "wx", mode);
  try {
    try {
      for (const part of inParts(chunks)) writeAll(opened, part);
      fsyncSync(opened);
    } finally {
      closeSync(opened);
    }
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

function writeAll(opened: number, bytes: Buffer): void {
  for (let written = 0; written < bytes.length;) written += writeSync(opened, bytes, written);
}
