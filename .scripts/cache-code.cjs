// Runs the built program once and keeps the machine code that V8 made of it (see src/cli/start.ts).
// Code that was run is kept too, so it checks an example that uses most of the language.
const { readFileSync, writeFileSync } = require("node:fs");
const { createRequire, wrap } = require("node:module");
const path = require("node:path");
const { Script } = require("node:vm");

const dist = path.resolve("dist", "cli");
const file = path.join(dist, "main.cjs");
const example = path.resolve("examples", "three-walls.tileplan");

const script = new Script(wrap(readFileSync(file, "utf8")), { filename: file });
process.argv.splice(2, Infinity, "check", example);
process.once("exit", () => {
  writeFileSync(path.join(dist, "main.v8"), script.createCachedData());
  process.exitCode = 0;
});
script.runInThisContext()({}, createRequire(file));
