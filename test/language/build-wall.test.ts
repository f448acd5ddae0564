import assert from "node:assert/strict";
import { plainStatement } from "./plain-statement.js";

describe("walls in the syntax tree", () => {
  const edges: Record<string, unknown> = {
    "bottom pan": { side: "bottom", meets: { kind: "plain", what: "pan" }, clauses: [] },
    "left corner end under": {
      side: "left",
      meets: { kind: "corner", wall: "end", lap: "under" },
      clauses: [],
    },
    "right free": { side: "right", meets: { kind: "free", trim: null }, clauses: [] },
    "top free trim nose joint 1/16 measured 0: 1, a: -b": {
      side: "top",
      meets: { kind: "free", trim: "nose" },
      clauses: [
        { kind: "joint-clause", joint: "joint", width: "1/16" },
        {
          kind: "measured",
          readings: [
            { at: "0", off: "1" },
            { at: "a", off: { kind: "negation", operand: "b" } },
          ],
        },
      ],
    },
  };
  for (const [text, wanted] of Object.entries(edges)) {
    it(`has ${text}`, () => {
      const found = plainStatement(`wall w {\n  ${text}\n}\n`, 0, 0);
      assert.deepEqual(found, { kind: "edge", ...(wanted as object) });
    });
  }

  const openings: Record<string, unknown> = {
    "at 18, a": { kind: "at", x: "18", xTo: null, y: "a", yTo: null },
    "at 18": { kind: "at", x: "18", xTo: null, y: null, yTo: null },
    "at 18 to 20": { kind: "at", x: "18", xTo: "20", y: null, yTo: null },
    "at 18 to 20, 40 to a": { kind: "at", x: "18", xTo: "20", y: "40", yTo: "a" },
    "at 18, 40 to 48": { kind: "at", x: "18", xTo: null, y: "40", yTo: "48" },
    "size 24 x 36": { kind: "size", first: "24", second: "36", upTo: null },
    "size 24 x 36 to 40": { kind: "size", first: "24", second: "36", upTo: "40" },
    "frame nose butt": { kind: "frame", trim: "nose", join: "butt" },
    "inset 1/4": { kind: "inset", length: "1/4" },
    "movement 1/16": { kind: "movement", length: "1/16" },
  };
  for (const [text, wanted] of Object.entries(openings)) {
    it(`has ${text}`, () => {
      assert.deepEqual(
        plainStatement(`wall w {\n  niche n {\n    ${text}\n  }\n}\n`, 0, 0, 0),
        wanted,
      );
    });
  }

  it("has holes, and plates over them", () => {
    assert.deepEqual(plainStatement("wall w {\n  hole v at 1, 2 across 3\n}\n", 0, 0), {
      kind: "hole",
      name: "v",
      x: "1",
      y: "2",
      across: "3",
      plate: null,
    });
    assert.deepEqual(plainStatement("wall w {\n  hole v at 1, 2 across 3 plate 4 x 5\n}\n", 0, 0), {
      kind: "hole",
      name: "v",
      x: "1",
      y: "2",
      across: "3",
      plate: { across: "4", up: "5" },
    });
  });

  it("has corners of outlines, and legs", () => {
    assert.deepEqual(plainStatement("wall w {\n  outline 0, 0 to a, 40\n}\n", 0, 0), {
      kind: "outline",
      corners: [
        { x: "0", y: "0" },
        { x: "a", y: "40" },
      ],
    });
    assert.deepEqual(plainStatement("wall w {\n  leg left 5 down 20 pan movement 1/8\n}\n", 0, 0), {
      kind: "leg",
      side: "left",
      across: "5",
      down: "20",
      meets: "pan",
      joint: { kind: "joint-clause", joint: "movement", width: "1/8" },
    });
  });

  it("has how the inside of an opening is laid", () => {
    const inside = (line: string) =>
      plainStatement(`wall w {\n  niche n {\n    ${line}\n  }\n}\n`, 0, 0, 0);
    const back = { kind: "lining", of: "back", tile: "chip", across: null, up: null };
    assert.deepEqual(inside("back chip"), { ...back, bond: null, joint: null });
    assert.deepEqual(inside("back chip stack"), { ...back, bond: { offset: null }, joint: null });
    assert.deepEqual(inside("back chip running 1/3 joint 1/16"), {
      ...back,
      bond: { offset: "1/3" },
      joint: "1/16",
    });
    assert.deepEqual(inside("sides chip across full tile from front up joint at 40"), {
      ...back,
      of: "sides",
      bond: null,
      joint: null,
      across: { choice: { kind: "full-tile", from: "front" } },
      up: { choice: { kind: "joint", y: "40" } },
    });
    assert.deepEqual(inside("back chip across tile centred on n up full course from top"), {
      ...back,
      bond: null,
      joint: null,
      across: { choice: { kind: "centred-on", what: "tile", name: "n" } },
      up: { choice: { kind: "full-course", from: "top" } },
    });
  });
});
