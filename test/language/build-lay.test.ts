import assert from "node:assert/strict";
import { plainStatement } from "./plain-statement.js";

describe("lays in the syntax tree", () => {
  const starts: Record<string, unknown> = {
    "bond stack": { kind: "bond", offset: null },
    "bond running 1/3": { kind: "bond", offset: "1/3" },
    "joint 1/16": { kind: "joint", min: "1/16", max: null },
    "joint a to b": { kind: "joint", min: "a", max: "b" },
    "across full tile from left": { kind: "across", choice: { kind: "full-tile", from: "left" } },
    "across tile centred on wall": {
      kind: "across",
      choice: { kind: "centred-on", what: "tile", name: "wall" },
    },
    "across joint centred at 30": {
      kind: "across",
      choice: { kind: "centred-at", what: "joint", x: "30" },
    },
    "up full course from top": { kind: "up", choice: { kind: "full-course", from: "top" } },
    "up full course over sash": {
      kind: "up",
      choice: { kind: "at-opening", relation: "over", name: "sash" },
    },
    "up joint at 40": { kind: "up", choice: { kind: "joint", y: "40" } },
    "across wrapped from end swallowed": {
      kind: "across",
      choice: { kind: "wrapped", wall: "end", joint: "swallowed" },
    },
    "across mirrored from end": { kind: "across", choice: { kind: "mirrored", wall: "end" } },
    "covers bottom to a + 1": {
      kind: "covers",
      from: "bottom",
      to: { kind: "sum", first: "a", rest: [{ operator: "+", operand: "1" }] },
    },
    "over dado": { kind: "lay-beside", relation: "over", lay: "dado" },
    "under dado": { kind: "lay-beside", relation: "under", lay: "dado" },
    "courses 8 of field, rest": {
      kind: "lay-courses",
      runs: [
        { many: "8", tile: "field" },
        { many: null, tile: null },
      ],
    },
    "between 1/8": { kind: "between", soft: false, length: "1/8" },
    "set courses 1 to 6": { kind: "set", first: "1", last: "6", joint: null, tops: [] },
    "set courses 2 to 3 joint 1/16 top 36 1/8 at left, 36 1/4 at a": {
      kind: "set",
      first: "2",
      last: "3",
      joint: "1/16",
      tops: [
        { y: "36 1/8", at: "left" },
        { y: "36 1/4", at: "a" },
      ],
    },
  };
  for (const [text, wanted] of Object.entries(starts)) {
    it(`has ${text}`, () => {
      assert.deepEqual(
        plainStatement(`wall w {\n  lay f {\n    ${text}\n  }\n}\n`, 0, 0, 0),
        wanted,
      );
    });
  }
});
