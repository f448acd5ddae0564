import assert from "node:assert/strict";
import { optionsText } from "../../../src/sheets/options/options-text.js";
import { panelText } from "../../solver/free-wall-text.js";
import { solveText } from "../../support/solve-text.js";
import { OPEN, STATED } from "./bench.js";

const told = (text: string): string => [...optionsText(solveText(text).solved)].join("");

describe("optionsText", () => {
  it("says what the plan has, what is better, and on which measure", () => {
    const text = told(STATED);
    assert.match(text, /^Options bench\n\nwall back \(Back wall\): 33 1\/4 in x 24 1\/4 in\n/);
    assert.match(
      text,
      /\n {2}its start is written down \(\w\); left open, it would be A, out of \d+ starts\n/,
    );
    assert.match(text, /\n {2}A {2}across .*, up .*, joint 1\/8\n {5}the best\n/);
    assert.match(
      text,
      /across full tile from left, up full course from bottom, joint 1\/8\n {5}what the plan has; behind A at slivers: \d+ against \d+\n/,
    );
  });

  it("says out of how many the solver chose", () => {
    const text = told(OPEN);
    assert.match(
      text,
      /\n {2}chosen out of \d+ starts\n {2}A .*\n {5}what the plan has; the best\n/,
    );
    assert.match(text, /worked back from the tile, from the start chosen now/);
  });

  it("says so when a written start can't be bettered", () => {
    const start = /A {2}(across .*), (up .*), joint/.exec(told(OPEN))!;
    const best = STATED.replace(/across full.*\n/, `${start[1]!}\n`).replace(
      /up full.*\n/,
      `${start[2]!}\n`,
    );
    assert.match(told(best), /its start is written down \(A\); none is better of \d+ starts/);
  });

  it("has a wall's lays one after the other, the lowest first, each with its own starts and figures", () => {
    const parts = told(panelText({ dado: "across tile centred at 5" })).split(/\n {2}the lay of /);
    assert.equal(parts.length, 3);
    const [, dado, field] = parts;
    assert.match(dado!, /^dado:\n {2}its start is written down \(E\); left open/);
    assert.match(field!, /^field:\n {2}its start is partly written down/);
    for (const part of [dado!, field!]) assert.match(part, /\n {4}slivers +\d/);
    assert.equal(told(STATED).includes("the lay of"), false);
  });

  it("says so of a start that is written in part", () => {
    assert.match(told(STATED.replace(/ {4}up.*\n/, "")), /its start is partly written down/);
  });

  it("says so of a wall that asks for too many pieces", () => {
    const many = STATED.replace("face 6 x 3", "face 0.001 x 0.001").replace(
      "joint 1/8",
      "joint 0.001",
    );
    assert.match(told(many), /\n {2}not laid: it asks for \d+ pieces, and the most is 2000000\n/);
  });

  it("cautions about what is built, and says so where nothing is laid", () => {
    assert.match(
      told(STATED),
      /follow local code, the\nmaker's instructions and a licensed trade\.\n$/,
    );
    const bare = told('units inch\nwall bare "" {\n size 10 x 10\n}\n');
    assert.equal(bare, "\nwall bare: 10 in x 10 in\n  no tile is laid on it\n");
    assert.equal(told("units inch\n"), "no walls: a stock list for other plans\n");
  });
});
