import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { gaugelath } from "./capture.js";
import { CLEAN } from "./plans.js";
import { commit, git, repository } from "./repository.js";
import { workplace } from "./workplace.js";

const LOWER = CLEAN.replace("x 8 5/16", "x 7 5/16");

describe("gaugelath show", () => {
  const place = workplace({ "clean.tileplan": CLEAN, "lower.tileplan": LOWER });

  it("prints a plan course by course", async () => {
    const { exit, out, err } = await gaugelath(place, ["show", "lower.tileplan"]);
    assert.deepEqual([exit, err], [0, ""]);
    assert.ok(out.startsWith('plan Test bench\n\nwall back "Back wall"\n'));
    assert.ok(out.includes("  courses from the bottom up\n    3 whole\n    3 at 3 in high\n"));
  });

  it("prints the same of another way to write it, and of a pipe", async () => {
    const { out } = await gaugelath(place, ["show", "clean.tileplan"]);
    place.write({
      "other.tileplan": `# a comment\n${CLEAN.replace("size 12 3/8", "size   12.375")}`,
    });
    assert.equal((await gaugelath(place, ["show", "other.tileplan"])).out, out);
    assert.equal((await gaugelath(place, ["show", "-"], { input: CLEAN })).out, out);
  });

  it("shows a plan with errors as far as it goes, and ends with 0: git wants its diff", async () => {
    const { exit, out } = await gaugelath(place, ["show", "-"], { input: `${CLEAN}wal {\n` });
    assert.equal(exit, 0);
    assert.match(out, /\nfindings\n {2}error syntax\//);
  });

  it("ends with 2 where there is no plan", async () => {
    assert.equal((await gaugelath(place, ["show", "gone.tileplan"])).exit, 2);
  });
});

const bundle = fileURLToPath(new URL("../../dist/cli.cjs", import.meta.url));
const STOCK = `units inch
tile field {
  face 4 x 4
  thickness 1/4
  variation 1/64
}
`;
const USING = CLEAN.replace(/tile field[\s\S]*?\n}\n/, 'use "stock.tileplan"\n');

// The built command as git itself calls it.
describe("git with gaugelath show as its textconv", () => {
  const place = repository((here) => {
    git(here.folder, "config", "diff.tileplan.textconv", `"${process.execPath}" "${bundle}" show`);
    git(here.folder, "config", "diff.tileplan.xfuncname", "^wall .*$");
    commit(here, "one", {
      ".gitattributes": "*.tileplan diff=tileplan\n",
      "bath.tileplan": CLEAN,
      "walls/stock.tileplan": STOCK,
      "walls/Dusche oben.tileplan": USING,
    });
    commit(here, "a lower ceiling", { "bath.tileplan": LOWER });
    commit(here, "both", {
      "walls/stock.tileplan": STOCK.replace("4 x 4", "4 x 3 7/8"),
      "walls/Dusche oben.tileplan": USING.replace("size 12 3/8 x 8 5/16", "size 12 3/8 x 8 1/16"),
    });
  });

  it("speaks of cuts in git diff", () => {
    const diff = git(place.folder, "diff", "HEAD~2", "HEAD~1", "--", "bath.tileplan");
    assert.ok(diff.includes("\n-    3 whole\n+    3 at 3 in high\n"), diff);
    assert.ok(!diff.includes("size 12"), diff);
    assert.match(diff, /^@@ .* @@ wall back "Back wall"$/m);
  });

  it("speaks of cuts in git log -p", () => {
    const log = git(place.folder, "log", "-p", "--format=%s", "--", "bath.tileplan");
    assert.ok(log.startsWith("a lower ceiling\n"), log);
    assert.ok(log.includes("\n+    3 at 3 in high\n"), log);
  });

  it("is silent about comments", () => {
    place.write({ "bath.tileplan": `# as measured\n${LOWER}` });
    const diff = git(place.folder, "diff", "--", "bath.tileplan");
    assert.ok(!diff.includes("@@"), diff);
  });

  it("reads what a plan used at the commit that brought its text", () => {
    const log = git(
      place.folder,
      "log",
      "-p",
      "-1",
      "--format=%s",
      "--",
      "walls/Dusche oben.tileplan",
    );
    assert.ok(log.includes("\n-  tile field 4 in x 4 in, stack bond\n"), log);
    assert.ok(log.includes("\n+  tile field 4 in x 3 7/8 in, stack bond\n"), log);
    assert.ok(!log.includes("findings"), log);
  });
});
