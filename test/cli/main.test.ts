import assert from "node:assert/strict";
import {
  spawnSync,
  type SpawnSyncOptionsWithStringEncoding,
  type SpawnSyncReturns,
} from "node:child_process";
import { fileURLToPath } from "node:url";
import { CLEAN, FAULTY } from "./plans.js";
import { workplace } from "./workplace.js";

const bundle = fileURLToPath(new URL("../../dist/cli.cjs", import.meta.url));

// The bundle that `npm run build` makes, in a process of its own.
describe("the built command", () => {
  const place = workplace({ "clean.tileplan": CLEAN, "faulty.tileplan": FAULTY });

  /** Without what a test run puts into the environment: NODE_OPTIONS loads TypeScript. */
  function inPlace(env: NodeJS.ProcessEnv = {}): SpawnSyncOptionsWithStringEncoding {
    const { NO_COLOR: _, FORCE_COLOR: __, NODE_OPTIONS: ___, ...rest } = process.env;
    return { cwd: place.folder, encoding: "utf8", env: { ...rest, ...env } };
  }

  function run(words: string[], env: NodeJS.ProcessEnv = {}): SpawnSyncReturns<string> {
    return spawnSync(process.execPath, [bundle, ...words], inPlace(env));
  }

  it("ends with the exit of its command", () => {
    assert.equal(run(["check", "clean.tileplan"]).status, 0);
    assert.equal(run(["check", "faulty.tileplan"]).status, 1);
    assert.equal(run(["check", "gone.tileplan"]).status, 2);
    assert.equal(run(["chekc"]).status, 2);
  });

  it("tells a failure of what is bundled apart like any other", () => {
    const gone = run(["sheet", "gone.tileplan", "-o", "gone.pdf"]);
    assert.equal(gone.status, 2);
    assert.equal(gone.stderr, "gaugelath: gone.tileplan: there is no such file or folder\n");
    assert.equal(run(["sheet", "clean.tileplan", "-o", "clean.odd"]).status, 2);
    assert.equal(run(["sheet", "clean.tileplan", "-o", "gone/clean.pdf"]).status, 2);
  });

  it("solves and draws", () => {
    const solved = run(["solve", "clean.tileplan", "--format", "json"]);
    assert.equal((JSON.parse(solved.stdout) as { schema: number }).schema, 1);
    const drawn = run(["draw", "clean.tileplan", "-o", "-"]);
    assert.match(drawn.stdout, /^<svg [\s\S]*<\/svg>\n$/);
    assert.equal(drawn.stderr, "");
  });

  it("writes colours neither into a pipe nor against NO_COLOR, but when forced", () => {
    assert.ok(!run(["check", "faulty.tileplan"]).stdout.includes("\u001b"));
    const forced = run(["check", "faulty.tileplan"], { FORCE_COLOR: "1" });
    assert.ok(forced.stdout.includes("\u001b[1;31merror"));
  });

  it("reads standard input", () => {
    const { status, stdout } = spawnSync(process.execPath, [bundle, "check", "-"], {
      ...inPlace(),
      input: FAULTY,
    });
    assert.equal(status, 1);
    assert.match(stdout, /^<stdin>:17:/);
  });

  it("stops quietly when whoever reads its output has seen enough", () => {
    const command = `"${process.execPath}" "${bundle}" solve wide.tileplan --format json | head -c 10`;
    place.write({ "wide.tileplan": CLEAN.replace("12 3/8 x 8 5/16", "1200 x 800") });
    const { stdout, stderr } = spawnSync("sh", ["-c", command], inPlace());
    assert.equal(stdout, `{"schema":`);
    assert.ok(!stderr.includes("EPIPE"), stderr);
  });

  it("says the whole of a long list of failures to a slow reader before it ends", () => {
    const gone = Array.from({ length: 3000 }, (_, i) => `gone-${i}.tileplan`);
    place.write({ names: gone.join("\n") });
    const command = `xargs -n 4000 "${process.execPath}" "${bundle}" check 2>&1 >/dev/null < names | (sleep 1; cat)`;
    const { stdout } = spawnSync("sh", ["-c", command], inPlace());
    const told = stdout.split("\n").filter((line) => line.startsWith("gaugelath: gone-"));
    assert.equal(told.length, gone.length);
  });
});
