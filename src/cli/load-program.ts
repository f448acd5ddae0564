import { readFileSync } from "node:fs";
import Module, { createRequire } from "node:module";
import path from "node:path";
import process from "node:process";
import { setFlagsFromString } from "node:v8";
import { Script } from "node:vm";

/** Most commands are over before fast code pays for itself. Later versions of V8 don't know these, and would say so aloud. */
const NODE_20_FLAGS: readonly string[] = [
  // How much of a function runs before V8 makes it fast, in bytes of its bytecode: four times V8's own figure.
  "--interrupt-budget=270000",
  // How often a function runs before V8 notes what it works on, and soon makes plain machine code of it: four
  // times V8's own figure.
  "--interrupt-budget-factor-for-feedback-allocation=32",
];

/** What V8 is told before anything is compiled; it belongs to what V8 keeps of a file. */
export const V8_FLAGS: readonly string[] = [
  ...(process.versions.node.startsWith("20.") ? NODE_20_FLAGS : []),
  // The room for new objects stays as small as it begins: to be given fresh memory costs a command
  // more than to clear the same more often does.
  "--semi-space-growth-factor=1",
];
for (const flag of V8_FLAGS) setFlagsFromString(flag);

type Program = (
  exports: object,
  require: (name: string) => unknown,
  module: { exports: object },
  file: string,
  folder: string,
) => void;

/**
 * Loads a built file, and gives what it exports; so are the built files loaded that it requires, by a
 * relative path. Each comes with the machine code that V8 made of it when it was built, where that
 * stands beside it: that takes a sixth off a check. V8 refuses code of another version of itself, and
 * then compiles the file as usual. `made` hears of each script.
 */
export function loadProgram(
  file: string,
  made: (script: Script, file: string) => void = () => undefined,
): object {
  const loaded = new Map<string, { exports: object }>();
  const load = (file: string): object => {
    const before = loaded.get(file);
    if (before) return before.exports;
    const module = { exports: {} };
    loaded.set(file, module);
    const script = compiled(file);
    made(script, file);
    const folder = path.dirname(file);
    const others = createRequire(file);
    const require = (name: string): unknown =>
      name.startsWith(".") ? load(path.join(folder, name)) : others(name);
    (script.runInThisContext() as Program)(module.exports, require, module, file, folder);
    return module.exports;
  };
  return load(file);
}

/** Where the machine code of a built file stands: `main.v8` beside `main.cjs`. */
export function codeOf(file: string): string {
  return `${file.slice(0, -path.extname(file).length)}.v8`;
}

function compiled(file: string): Script {
  const cachedData = read(codeOf(file));
  return new Script(Module.wrap(readFileSync(file, "utf8")), {
    filename: file,
    ...(cachedData && { cachedData }),
  });
}

function read(name: string): Buffer | null {
  try {
    return readFileSync(name);
  } catch {
    return null;
  }
}
