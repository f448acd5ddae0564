import assert from "node:assert/strict";
import { build } from "esbuild";
import { fileURLToPath } from "node:url";
import { leanGrammar } from "../../.scripts/lean-grammar.mjs";
import { firstTokens } from "../../src/language/first-tokens.js";
import { TOKENS } from "../../src/language/line-grammar.js";

const MODULE = fileURLToPath(new URL("../../src/language/first-tokens.ts", import.meta.url));

describe("the first tokens of the grammar's ways", () => {
  const { alternatives, optional } = firstTokens();
  const ways = Object.values(alternatives);

  it("are known tokens, some for each way", () => {
    for (const firsts of [...ways.flat(), ...Object.values(optional)]) {
      assert.ok(firsts.length > 0 && firsts.every((first) => first in TOKENS), firsts.join());
    }
  });

  it("tell the statements of a plan apart", () => {
    const names = ways.map((place) => place.map((firsts) => firsts.map((i) => TOKENS[i]!.name)));
    const statements = names.find((place) => place.some(([name]) => name === "UnitsStart"))!;
    assert.deepEqual(statements.slice(0, 3), [["PlanStart"], ["UnitsStart"], ["BedStart"]]);
    assert.ok(statements.every((firsts) => firsts.length === 1));
  });

  it("are in a bundle as they are here, without the grammar that they come from", async () => {
    const { outputFiles } = await build({
      entryPoints: [MODULE],
      bundle: true,
      write: false,
      format: "esm",
      plugins: [leanGrammar],
    });
    const { text } = outputFiles[0]!;
    const bundled = (await import(`data:text/javascript,${encodeURIComponent(text)}`)) as {
      readonly firstTokens: typeof firstTokens;
    };
    assert.deepEqual(bundled.firstTokens(), firstTokens());
    assert.doesNotMatch(text, /Parser|import/);
  });
});
