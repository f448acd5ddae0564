import assert from "node:assert/strict";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { ESLint } from "eslint";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The messages of the project's own lint, import direction only, about a text in a file of src/. */
async function faultsOf(file: string, text: string): Promise<string[]> {
  const lint = new ESLint({
    cwd: root,
    ruleFilter: ({ ruleId }) => ruleId === "house/import-direction",
  });
  const [result] = await lint.lintText(text, { filePath: path.join(root, "src", file) });
  return result!.messages.map((message) => message.message);
}

// The project's lint reads files that exist, so each text stands in for a real one.
describe("the import direction", () => {
  it("lets a folder import a lower one through its face", async () => {
    assert.deepEqual(
      await faultsOf("solver/box.ts", `import type { Nm } from "../measure/index.js";`),
      [],
    );
  });

  it("tells an upward import, however it is written", async () => {
    const upward = [
      `import { check } from "../rules/index.js";`,
      `import type { Rule } from "../rules/index.js";`,
      `export { check } from "../rules/index.js";`,
      `export * from "../rules/index.js";`,
      `export const later = import("../rules/index.js");`,
      `export type Rule = import("../rules/index.js").Rule;`,
    ];
    for (const text of upward) {
      const wanted = "solver may not import rules: imports run downward only (.scripts/house.mjs).";
      assert.deepEqual(await faultsOf("solver/box.ts", text), [wanted], text);
    }
  });

  it("tells an import past a folder's face", async () => {
    assert.deepEqual(
      await faultsOf("solver/box.ts", `import { NM_PER } from "../measure/nanometre.js";`),
      ["Import measure through its face, measure/index.js."],
    );
  });

  it("lets a folder below its own folder reach its siblings", async () => {
    assert.deepEqual(await faultsOf("solver/solved.ts", `import "./choose/judge.js";`), []);
  });

  it("tells a package that the folder has no leave for, Node's own too", async () => {
    for (const [text, name] of [
      [`import "chevrotain";`, "chevrotain"],
      [`import "node:fs";`, "node:fs"],
      [`import "fs/promises";`, "fs"],
    ] as const) {
      const wanted = `solver may not import ${name}: .scripts/house.mjs names its packages.`;
      assert.deepEqual(await faultsOf("solver/box.ts", text), [wanted]);
    }
    assert.deepEqual(await faultsOf("cli/main.ts", `import "node:fs";`), []);
  });

  it("keeps the roofs from each other", async () => {
    assert.deepEqual(await faultsOf("cli/main.ts", `import "../server/index.js";`), [
      "cli may not import server: imports run downward only (.scripts/house.mjs).",
    ]);
  });

  it("lets a roof import what another one says, and nothing else of it", async () => {
    const text = `import "../server/protocol.js"; import "../preview/messages.js";`;
    assert.deepEqual(await faultsOf("cli/main.ts", text), []);
    assert.deepEqual(await faultsOf("solver/box.ts", `import "../server/protocol.js";`), [
      "solver may not import server: imports run downward only (.scripts/house.mjs).",
    ]);
  });
});
