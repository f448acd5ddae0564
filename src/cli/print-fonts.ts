import { readFileSync } from "node:fs";
import path from "node:path";
import type { FontFiles } from "../sheets/print.js";
import { Failure, systemReason } from "./failure.js";

/** The print font's files; `assets` is the folder in which they stand. Throws a Failure when they don't. */
export function readFonts(assets: string): FontFiles {
  try {
    const read = (name: string): Uint8Array => readFileSync(path.join(assets, "fonts", name));
    return { regular: read("regular.ttf"), bold: read("bold.ttf") };
  } catch (error) {
    throw new Failure(`the print font could not be read: ${systemReason(error)}`);
  }
}
