import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { cpSync, existsSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { CLEAN } from "./plans.js";
import { workplace } from "./workplace.js";

const dist = fileURLToPath(new URL("../../dist", import.meta.url));

describe("the start of the built command", () => {
  const place = workplace({ "clean.tileplan": CLEAN });

  before(() => {
    cpSync(`${dist}/cli.cjs`, place.path("dist/cli.cjs"));
    cpSync(`${dist}/cli`, place.path("dist/cli"), { recursive: true });
  });

  function check(): string {
    const { NODE_OPTIONS: _, ...env } = process.env;
    const words = [place.path("dist/cli.cjs"), "check", "clean.tileplan"];
    const { stdout, stderr } = spawnSync(process.execPath, words, {
      cwd: place.folder,
      encoding: "utf8",
      env,
    });
    return stdout + stderr;
  }

  const ANSWER = "1 plan checked: no errors, no warnings\n";

  it("has the code that V8 made at the build", () => {
    for (const code of ["cli/main.v8", "cli/sheet.v8", "print.v8"]) {
      assert.ok(existsSync(`${dist}/${code}`), code);
    }
    assert.equal(check(), ANSWER);
  });

  it("does without it where V8 refuses it, or it is missing", () => {
    writeFileSync(place.path("dist/cli/main.v8"), "of another version");
    assert.equal(check(), ANSWER);
    rmSync(place.path("dist/cli/main.v8"));
    assert.equal(check(), ANSWER);
  });
});
