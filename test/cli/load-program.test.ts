import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import path from "node:path";
import process from "node:process";
import type { Script } from "node:vm";
import { codeOf, loadProgram, V8_FLAGS } from "../../src/cli/load-program.js";
import { workplace } from "./workplace.js";

describe("a built program's load", () => {
  const place = workplace({
    "cli/main.cjs":
      'exports.sum = require("./one.cjs").value + require("../two.js").value + require("./one.cjs").value;' +
      'exports.separator = require("node:path").sep; exports.place = [__filename, __dirname];',
    "cli/one.cjs": "globalThis.timesLoaded = (globalThis.timesLoaded ?? 0) + 1; exports.value = 1;",
    "other.cjs": "exports.sum = 4;",
    "two.js": "module.exports = { value: 2 };",
  });
  const main = (): string => place.path("cli/main.cjs");
  const seen = globalThis as { timesLoaded?: number };

  it("loads what it requires, each file once, and Node's own modules", () => {
    seen.timesLoaded = 0;
    assert.deepEqual(loadProgram(main()), {
      sum: 4,
      separator: path.sep,
      place: [main(), path.dirname(main())],
    });
    assert.equal(seen.timesLoaded, 1);
  });

  it("takes the machine code that stands beside each file", () => {
    const scripts: [string, Script][] = [];
    loadProgram(main(), (script, file) => scripts.push([file, script]));
    const names = scripts.map(([file]) => path.basename(file));
    assert.deepEqual(names, ["main.cjs", "one.cjs", "two.js"]);
    for (const [file, script] of scripts) writeFileSync(codeOf(file), script.createCachedData());
    const refused: unknown[] = [];
    const look = ({ cachedDataRejected }: Script): unknown => refused.push(cachedDataRejected);
    loadProgram(main(), look);
    assert.deepEqual(refused, [false, false, false]);
  });

  it("does without code that V8 refuses", () => {
    const other = place.path("other.cjs");
    writeFileSync(codeOf(other), "of another version");
    const refused: unknown[] = [];
    const program = loadProgram(other, (script) => refused.push(script.cachedDataRejected));
    assert.deepEqual([program, refused], [{ sum: 4 }, [true]]);
  });

  it("says which file is missing", () => {
    assert.throws(() => loadProgram(place.path("cli/none.cjs")), /none\.cjs/);
  });

  it("tells V8 only what this version of it knows: of others it complains on standard error", () => {
    const known = execFileSync(process.execPath, ["--v8-options"], { encoding: "utf8" });
    for (const flag of V8_FLAGS) assert.ok(known.includes(`  ${flag.split("=")[0]!} (`), flag);
  });
});
