import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import type { Press } from "./answer-sheets.js";

/** What prints, from the built files in a folder. */
export function diskPress(folder: string): Press {
  const load = createRequire(path.join(folder, "print.js"));
  const font = (name: string): Uint8Array => readFileSync(path.join(folder, "fonts", name));
  return {
    print: load("./print.js") as Press["print"],
    fonts: { regular: font("regular.ttf"), bold: font("bold.ttf") },
  };
}
