import assert from "node:assert/strict";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import type { IGrammar } from "vscode-textmate";
import { STATEMENTS } from "../../src/language/vocabulary.js";
import { loadGrammar, tokenise } from "./tokenise.js";

const PLANS = new URL("plans/", import.meta.url);
const SNAPSHOTS = new URL("snapshots/", import.meta.url);

/** Set to write the snapshots anew; look at the difference before it is committed. */
const ACCEPT = process.env.ACCEPT_SNAPSHOTS === "1";

describe("the TextMate grammar", () => {
  let grammar: IGrammar;
  before(async () => {
    grammar = await loadGrammar();
  });

  for (const file of readdirSync(PLANS)) {
    it(`takes ${file} apart as its snapshot says`, () => {
      const found = tokenise(grammar, readFileSync(new URL(file, PLANS), "utf8"));
      const snapshot = new URL(`${file}.txt`, SNAPSHOTS);
      if (ACCEPT) writeFileSync(snapshot, found);
      assert.ok(existsSync(snapshot), `no snapshot of ${file} (ACCEPT_SNAPSHOTS=1 writes it)`);
      assert.equal(found, readFileSync(snapshot, "utf8"));
    });
  }

  it("reads an inch mark after a digit, and a quote elsewhere", () => {
    assert.equal(
      tokenise(grammar, `  size 5' 6 1/2" x 18" # "wide"`),
      [
        `>  size 5' 6 1/2" x 18" # "wide"`,
        "  size = meta.statement entity.name.tag.statement",
        "  5 = meta.statement constant.numeric",
        "  ' = meta.statement keyword.other.unit",
        "  6 1/2 = meta.statement constant.numeric",
        `  " = meta.statement keyword.other.unit`,
        "  x = meta.statement keyword.operator.times",
        "  18 = meta.statement constant.numeric",
        `  " = meta.statement keyword.other.unit`,
        "  # = meta.statement comment.line.number-sign punctuation.definition.comment",
        `  "wide" = meta.statement comment.line.number-sign`,
        "",
      ].join("\n"),
    );
  });

  it("knows the start of a surface inside an opening", () => {
    const line = "  sides chip stack across full tile from front up joint at 40";
    const names = tokenise(grammar, line)
      .split("\n")
      .filter((each) => /= .*(?:keyword|enummember)/.test(each))
      .map((each) => each.trim().split(" = ")[0]);
    assert.deepEqual(names, [
      ...["stack", "across", "full", "tile", "from", "front"],
      ...["up", "joint", "at"],
    ]);
  });

  it("does not let an unclosed text run on into the next line", () => {
    const [, second] = tokenise(grammar, `plan "open\nunits mm`).split(">units mm\n");
    assert.match(second!, /^ {2}units = meta.statement keyword.control\n {2}mm = /);
  });

  it("knows every word that begins a statement", () => {
    for (const word of Object.values(STATEMENTS).flatMap((words) => [...words.keys()])) {
      assert.doesNotMatch(tokenise(grammar, `${word} {`), /plain/);
    }
  });
});
