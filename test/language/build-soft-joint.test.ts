import assert from "node:assert/strict";
import { plainStatement } from "./plain-statement.js";

describe("soft joints in the syntax tree", () => {
  const lines: Record<string, unknown> = {
    "movement joint at a + 1": {
      kind: "soft-joint",
      joint: {
        kind: "head",
        at: { kind: "sum", first: "a", rest: [{ operator: "+", operand: "1" }] },
      },
    },
    "movement joint over course 12": { kind: "soft-joint", joint: { kind: "bed", over: "12" } },
    "between 1/8": { kind: "between", soft: false, length: "1/8" },
    "between movement 1/8": { kind: "between", soft: true, length: "1/8" },
    "between movement": { kind: "between", soft: false, length: "movement" },
    "between movement gap": { kind: "between", soft: true, length: "gap" },
  };
  for (const [text, wanted] of Object.entries(lines)) {
    it(`has ${text}`, () => {
      assert.deepEqual(
        plainStatement(`wall w {\n  lay f {\n    ${text}\n  }\n}\n`, 0, 0, 0),
        wanted,
      );
    });
  }

  it("may stand in a wall, where `movement` is a side's joint, too", () => {
    const text = "wall w {\n  left wall movement 1/8\n  movement joint over course 3\n}\n";
    assert.deepEqual(
      plainStatement(text, 0, 1),
      lines["movement joint over course 12"] && {
        kind: "soft-joint",
        joint: { kind: "bed", over: "3" },
      },
    );
  });
});
