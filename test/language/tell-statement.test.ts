import assert from "node:assert/strict";
import { planOf, told, wallText } from "./telling.js";

describe("a line that begins no statement of its block", () => {
  it("is told with the statements that could stand there", () => {
    assert.deepEqual(told("5 apples\n"), [
      "syntax/statement [5] found `5`, wanted a statement at the top of a plan: `plan`, `units`, `bed`, `let`, `use`, `tile`, `trim`, `saw`, `mortar`, `grout`, `sealant`, `wall`, `prefer`, `rules` or `allow`",
    ]);
  });

  it("is told where it belongs, when it belongs elsewhere", () => {
    const [message] = told("face 5 x 3\n");
    assert.match(message!, /^syntax\/statement \[face\].*; it belongs in a tile or in a trim$/);
  });

  it("is taken for the statement that it nearly is", () => {
    const text = "untis mm\nwal back {\n  sise 60 x 96\n}\n";
    assert.deepEqual(
      told(text).map((message) => message.replace(/found.*; did/, "did")),
      [
        "syntax/statement [untis] did you mean `units`?",
        "syntax/statement [wal] did you mean `wall`?",
        "syntax/statement [sise] did you mean `size`?",
      ],
    );
    const plan = planOf(text);
    assert.equal(plan.units, "mm");
    assert.deepEqual(plan.walls[0]!.size, { across: 60_000_000, up: 96_000_000 });
  });

  it("costs its block when its heading can't be guessed, with one message", () => {
    const messages = told(
      wallText("  alcove sash {\n    at 18, 46\n    shelf {\n }\n  }\n  top ceiling"),
    );
    assert.deepEqual(messages.length, 1);
    assert.match(
      messages[0]!,
      /^syntax\/statement \[alcove\] found `alcove`, wanted a statement in a wall/,
    );
  });

  it("in the rules is told as no name of a limit", () => {
    assert.deepEqual(told("rules {\n  5\n}\n"), [
      "syntax/statement [5] found `5`, wanted the name of a limit",
    ]);
  });
});
