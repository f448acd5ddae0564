#!/usr/bin/env node
import { readFileSync } from "node:fs";
import { createRequire, wrap } from "node:module";
import path from "node:path";
import { Script } from "node:vm";

/**
 * Runs the program (cli/main.cjs, beside this file) with the machine code that V8 made of it when it
 * was built: that takes a sixth off a check. V8 refuses code of another version of itself, and then
 * compiles the program as usual.
 */
const file = path.join(__dirname, "cli", "main.cjs");
const cachedData = read(path.join(__dirname, "cli", "main.v8"));
const script = new Script(wrap(readFileSync(file, "utf8")), {
  filename: file,
  ...(cachedData && { cachedData }),
});
type Program = (
  exports: object,
  require: NodeJS.Require,
  module: object,
  file: string,
  folder: string,
) => void;
const program = script.runInThisContext() as Program;
program({}, createRequire(file), {}, file, path.dirname(file));

function read(name: string): Buffer | null {
  try {
    return readFileSync(name);
  } catch {
    return null;
  }
}
