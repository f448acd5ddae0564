import assert from "node:assert/strict";
import type { IToken } from "chevrotain";
import { firstTokens } from "../../src/language/first-tokens.js";
import { PlanGrammar } from "../../src/language/grammar.js";
import { layOut } from "../../src/language/layout.js";
import { tokenise } from "../../src/language/lexer.js";
import { tableLines } from "../../src/language/line-table.js";
import { PreparedGrammar } from "../../src/language/prepared-grammar.js";
import { exampleNames, exampleText } from "../support/examples.js";
import { mutate, seeded } from "./mutate.js";
import { FULL } from "./telling.js";

const MUTATIONS = 400;

const tokensOf = (text: string) => layOut(tokenise(text), tableLines(text)).tokens;

function read(grammar: PlanGrammar, tokens: readonly IToken[]) {
  grammar.input = [...tokens];
  const cst = grammar.text();
  const { errors } = grammar;
  return { cst: errors.length === 0 ? cst : null, from: errors.map(({ token }) => token) };
}

describe("the prepared grammar", () => {
  const prepared = new PreparedGrammar(firstTokens());
  const recorded = new PlanGrammar({ skipValidations: true, recovers: false });

  it("reads every example, and every statement, as the recorded one", () => {
    for (const text of [FULL, ...exampleNames().map(exampleText)]) {
      const reading = read(prepared, tokensOf(text));
      assert.ok(reading.cst);
      assert.deepEqual(reading, read(recorded, tokensOf(text)));
    }
  });

  it("stops where the recorded one does", () => {
    const random = seeded(20_260_301);
    let stopped = 0;
    for (let i = 0; i < MUTATIONS; i++) {
      const text = mutate(FULL, random);
      const reading = read(prepared, tokensOf(text));
      if (reading.cst === null) stopped++;
      assert.deepEqual(reading, read(recorded, tokensOf(text)), text);
    }
    assert.ok(stopped > MUTATIONS / 4, `${stopped}`);
  });

  it("reads the next text after an error", () => {
    assert.equal(read(prepared, tokensOf("wall")).from.length, 1);
    assert.ok(read(prepared, tokensOf("units mm\n")).cst);
  });
});
