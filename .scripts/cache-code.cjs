// Runs the built program once and keeps the machine code that V8 made of it (see src/cli/start.ts).
// Only code that was run is kept, so it checks the examples and compares two, which use most of it.
const { readFileSync, writeFileSync } = require("node:fs");
const { createRequire, wrap } = require("node:module");
const path = require("node:path");
const { Script } = require("node:vm");

const dist = path.resolve("dist", "cli");
const file = path.join(dist, "main.cjs");
const examples = path.resolve("examples");

const script = new Script(wrap(readFileSync(file, "utf8")), { filename: file });
const runs = [
  ["check", examples],
  ["compare", path.join(examples, "faults.tileplan"), path.join(examples, "three-walls.tileplan")],
];

/** The next command, when the one before has nothing left to do; after the last the code is kept. */
function runNext() {
  const words = runs.shift();
  if (!words) return;
  process.argv.splice(2, Infinity, ...words);
  script.runInThisContext()({}, createRequire(file), {}, file, dist);
}

process.on("beforeExit", runNext);
process.once("exit", () => {
  writeFileSync(path.join(dist, "main.v8"), script.createCachedData());
  process.exitCode = 0;
});
runNext();
