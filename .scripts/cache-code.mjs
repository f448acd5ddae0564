// Runs the built program and keeps the machine code that V8 made of its files (see
// src/cli/load-program.ts); run with tsx. Only code that was run is kept, so it checks the examples,
// compares two, and one with itself after a small change, and prints a sheet, which use most of it. What
// no such run loads has no code kept.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { devNull, tmpdir } from "node:os";
import path from "node:path";
import process from "node:process";
import { setImmediate } from "node:timers";
import { codeOf, loadProgram } from "../src/cli/load-program.ts";

const examples = path.resolve("examples");
const threeWalls = path.join(examples, "three-walls.tileplan");
const changes = mkdtempSync(path.join(tmpdir(), "gaugelath-build-"));
const runs = [
  ["check", examples],
  ["compare", path.join(examples, "faults.tileplan"), threeWalls],
  ["compare", threeWalls, withMovedWindow()],
  ["sheet", threeWalls, "--format", "pdf", "-o", devNull],
];
/** The scripts of each file; a run loads them anew. */
const scripts = new Map();

/** The three walls, their window two inches further up. */
function withMovedWindow() {
  const moved = path.join(changes, path.basename(threeWalls));
  const text = readFileSync(threeWalls, "utf8");
  const [from, to] = ["at 16 1/2, 44 1/2", "at 16 1/2, 46 1/2"];
  if (!text.includes(from)) throw new Error(`${threeWalls} has no window \`${from}\``);
  writeFileSync(moved, text.replace(from, to));
  cpSync(path.join(examples, "stock.tileplan"), path.join(changes, "stock.tileplan"));
  return moved;
}

function runNext() {
  process.argv.splice(2, Infinity, ...runs.shift());
  loadProgram(path.resolve("dist", "cli", "main.cjs"), (script, file) => scripts.set(file, script));
}

// The next command, when the one before has nothing left to do; after the last the code is kept.
process.on("beforeExit", () => {
  if (runs.length > 0) setImmediate(runNext);
});
process.once("exit", () => {
  rmSync(changes, { recursive: true, force: true });
  for (const [file, script] of scripts) writeFileSync(codeOf(file), script.createCachedData());
  process.exitCode = 0;
});
runNext();
