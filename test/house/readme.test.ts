import assert from "node:assert/strict";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import path from "node:path";
import { compare, comparisonText } from "../../src/compare/index.js";
import { run } from "../../src/engine.js";
import { RULES } from "../../src/rules/index.js";
import { optionsText, readingText } from "../../src/sheets/index.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const readme = readFileSync(path.join(root, "README.md"), "utf8");

/** The code blocks under a heading. */
function blocksUnder(heading: string): string[] {
  const section = readme.split(`\n## ${heading}\n`)[1]!.split("\n## ")[0]!;
  return [...section.matchAll(/```\n([\s\S]*?)```/g)].map(([, block]) => block!);
}

describe("the README", () => {
  it("shows a plan that has nothing to tell, and what the solver really makes of it", () => {
    const [plan, reading] = blocksUnder("A short plan");
    const { solved, diagnostics } = run(plan!, { file: "a", root: "", read: () => null });
    assert.deepEqual(diagnostics, []);
    const [told] = [...readingText(solved)].join("").split("\nBefore you cut");
    assert.equal(reading, told);
  });

  it("shows the options that an example really has", () => {
    // How many starts are weighed is no part of what is promised.
    const plain = (text: string): string => text.replace(/out of \d+ starts/, "out of N starts");
    const plan = readFileSync(path.join(root, "examples", "niche-wall.tileplan"), "utf8");
    const { solved } = run(plan, { file: "a", root: "", read: () => null });
    const [shown] = blocksUnder("Layouts side by side");
    assert.ok(plain([...optionsText(solved)].join("")).includes(`\n\n${plain(shown!)}\n`));
  });

  it("shows what a comparison really says", () => {
    const plan = readFileSync(path.join(root, "examples", "niche-wall.tileplan"), "utf8");
    const [before, after] = [plan, plan.replace("joint 2\n", "joint 3\n")].map((text) =>
      run(text, { file: "a", root: "", read: () => null }),
    );
    const [shown] = blocksUnder("Reviewing a change");
    assert.equal(shown, [...comparisonText(compare(before!, after!))].join(""));
  });

  it("has every rule in its table, with its severity", () => {
    for (const { code, severity } of RULES) {
      assert.ok(readme.includes(`| \`${code}\` | ${severity} |`), code);
    }
  });

  it("points at files that are there", () => {
    const links = [...readme.matchAll(/\]\(([^)#]+)\)/g)].map(([, link]) => link!);
    assert.ok(links.length > 5);
    for (const link of links) assert.ok(existsSync(path.join(root, link)), link);
  });
});
