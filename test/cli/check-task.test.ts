import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { manyPlans } from "./many-plans.js";
import { CLEAN, FAULTY } from "./plans.js";
import { workplace } from "./workplace.js";

/** The file that the editor's package holds for all that runs beside the editor. */
const program = fileURLToPath(new URL("../../dist/server.js", import.meta.url));

describe("the program of the editor's task", () => {
  const few = workplace({ "clean.tileplan": CLEAN, "faulty.tileplan": FAULTY });
  const many = workplace(manyPlans(40));

  function check(folder: string, ...words: string[]): { status: number | null; out: string } {
    const { NODE_OPTIONS: _, ...env } = process.env;
    const { status, stdout } = spawnSync(process.execPath, [program, "check", ...words], {
      cwd: folder,
      encoding: "utf8",
      env,
    });
    return { status, out: stdout };
  }

  it("ends with the exit of its check", () => {
    assert.equal(check(few.folder, "clean.tileplan").status, 0);
    assert.equal(check(few.folder, ".").status, 1);
    assert.equal(check(few.folder, "gone.tileplan").status, 2);
  });

  it("checks a folder of many plans, where the command line starts threads", () => {
    const { status, out } = check(many.folder, "plans");
    assert.equal(status, 1);
    assert.match(out, /41 plans checked/);
  });
});
