import assert from "node:assert/strict";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { leanGrammar } from "../../.scripts/lean-grammar.mjs";
import * as language from "../../src/language/index.js";
import { mutate, seeded } from "../language/mutate.js";
import { FULL } from "../language/telling.js";
import { bundleProgram } from "../support/bundle-program.js";

const FACE = new URL("../../src/language/index.ts", import.meta.url);
const MUTATIONS = 120;

describe("the grammar in a bundle", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-lean-"));
  let bundled: typeof language;

  before(async () => {
    const file = path.join(folder, "language.mjs");
    await bundleProgram(FACE, file, { plugins: [leanGrammar] });
    bundled = (await import(pathToFileURL(file).href)) as typeof language;
  });
  after(() => rmSync(folder, { recursive: true }));

  it("understands, tells and expects what it does from its source", () => {
    const random = seeded(20_260_401);
    let broken = 0;
    for (let i = 0; i < MUTATIONS; i++) {
      const text = i === 0 ? FULL : mutate(FULL, random);
      const { statements, problems } = language.parse(text);
      if (problems.length > 0) broken++;
      const other = bundled.parse(text);
      assert.deepEqual([other.statements, other.problems], [statements, problems], text);
      const offset = Math.floor(random() * text.length);
      assert.deepEqual(bundled.expectedAt(text, offset), language.expectedAt(text, offset), text);
    }
    assert.ok(broken > MUTATIONS / 2, `${broken}`);
  });
});
