import assert from "node:assert/strict";
import { chmodSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { CLEAN, FAULTY } from "./plans.js";
import { commit, git, repository } from "./repository.js";

const bundle = fileURLToPath(new URL("../../dist/cli.cjs", import.meta.url));
const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");

// The hook as the README has it, run by git with the built command.
describe("the hook of the README", () => {
  const place = repository((here) => {
    commit(here, "one", { "bath.tileplan": CLEAN });
    const [, hook] = /```\n(#!\/bin\/sh\n[\s\S]*?)```/.exec(readme)!;
    const command = `gaugelath() { "${process.execPath}" "${bundle}" "$@"; }`;
    const file = here.path(".git/hooks/pre-commit");
    writeFileSync(file, hook!.replace("#!/bin/sh\n", `#!/bin/sh\n${command}\n`));
    chmodSync(file, 0o755);
  });

  it("stops a commit that brings an error, and says which", () => {
    assert.throws(
      () => commit(place, "a fault", { "bath.tileplan": FAULTY }),
      (error: { stderr: string; stdout: string }) =>
        `${error.stdout}${error.stderr}`.includes("new: error joint/too-narrow"),
    );
    assert.equal(git(place.folder, "log", "--format=%s"), "one\n");
  });

  it("lets others pass", () => {
    commit(place, "a comment", { "bath.tileplan": `# a comment\n${CLEAN}` });
    assert.equal(git(place.folder, "log", "--format=%s"), "a comment\none\n");
  });
});
