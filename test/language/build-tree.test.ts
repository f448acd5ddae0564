import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import type { Syntax } from "../../src/language/index.js";
import { FULL } from "./telling.js";

type Plain = Record<string, unknown>;

/** A statement of the tree with words and expressions as their text. */
function plain(value: unknown, text: string): unknown {
  if (Array.isArray(value)) return value.map((part) => plain(part, text));
  if (typeof value !== "object" || value === null) return value;
  const { start, end, kind, head: _, ...rest } = value as Plain & Syntax.Word;
  if ("text" in rest || "quantity" in rest) return text.slice(start, end);
  return {
    ...(kind === undefined ? {} : { kind }),
    ...Object.fromEntries(Object.entries(rest).map(([key, part]) => [key, plain(part, text)])),
  };
}

function statement(text: string, ...path: number[]): unknown {
  let [found]: readonly Syntax.Statement[] = parse(text).statements.slice(path[0]);
  for (const i of path.slice(1)) found = (found as Syntax.WallStatement).body[i];
  return plain(found, text);
}

describe("the syntax tree", () => {
  const statements: Record<string, unknown> = {
    'plan "A"': { kind: "plan", title: '"A"' },
    "units mm": { kind: "units", unit: "mm" },
    "bed 1/8": { kind: "bed", length: "1/8" },
    "let a = b": { kind: "let", name: "a", value: "b" },
    'use "a.tileplan"': { kind: "use", path: '"a.tileplan"' },
    'allow cut/under-half "why"': { kind: "allow", code: "cut/under-half", reason: '"why"' },
  };
  for (const [text, wanted] of Object.entries(statements)) {
    it(`has ${text}`, () => assert.deepEqual(statement(`${text}\n`, 0), wanted));
  }

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
      const found = statement(`wall w {\n  ${text}\n}\n`, 0, 0) as Plain;
      assert.deepEqual(found, { kind: "edge", ...(wanted as Plain) });
    });
  }

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
  };
  for (const [text, wanted] of Object.entries(starts)) {
    it(`has ${text}`, () => {
      assert.deepEqual(statement(`wall w {\n  lay f {\n    ${text}\n  }\n}\n`, 0, 0, 0), wanted);
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
      assert.deepEqual(statement(`wall w {\n  niche n {\n    ${text}\n  }\n}\n`, 0, 0, 0), wanted);
    });
  }

  const wishes: Record<string, unknown> = {
    "courses meet": { wanted: "courses-meet" },
    "bond goes on": { wanted: "bond-goes-on" },
    "centre on sash": { wanted: "centre", opening: "sash" },
    "no cut under 1 1/2": { wanted: "no-cut", under: "1 1/2" },
    "whole courses at bottom": { wanted: "whole-courses", at: "bottom" },
    "whole courses at top": { wanted: "whole-courses", at: "top" },
    "whole courses at sill of sash": { wanted: "whole-courses", at: "sill", opening: "sash" },
    "whole courses at head of top": { wanted: "whole-courses", at: "head", opening: "top" },
    "equal ends": { wanted: "equal-ends" },
    "few cuts": { wanted: "few-cuts" },
  };
  for (const [text, wish] of Object.entries(wishes)) {
    it(`has ${text} for the room and for a wall`, () => {
      const wanted = { kind: "wish", wish };
      assert.deepEqual(statement(`prefer {\n  ${text}\n}\n`, 0, 0), wanted);
      assert.deepEqual(statement(`wall w {\n  prefer {\n    ${text}\n  }\n}\n`, 0, 0, 0), wanted);
    });
  }

  it("has holes and limits", () => {
    assert.deepEqual(statement("wall w {\n  hole v at 1, 2 across 3\n}\n", 0, 0), {
      kind: "hole",
      name: "v",
      x: "1",
      y: "2",
      across: "3",
      plate: null,
    });
    assert.deepEqual(statement("wall w {\n  hole v at 1, 2 across 3 plate 4 x 5\n}\n", 0, 0), {
      kind: "hole",
      name: "v",
      x: "1",
      y: "2",
      across: "3",
      plate: { across: "4", up: "5" },
    });
    assert.deepEqual(statement("rules {\n half off, sliver 1\n}\n", 0, 1), {
      kind: "limit",
      name: "sliver",
      value: "1",
    });
  });

  it("keeps a line that is broken as what it would have been", () => {
    assert.deepEqual(statement("bed\n", 0), { kind: "broken", meant: "bed" });
    assert.deepEqual(statement("wall w {\n  left corner\n}\n", 0, 0), {
      kind: "broken",
      meant: "left",
    });
  });

  it("keeps a block whose heading is broken", () => {
    const [wall] = parse("wall 9 {\n  size 4 x 5\n}\n").statements;
    assert.ok(wall?.kind === "wall");
    assert.equal(wall.name, null);
    assert.equal(wall.body.length, 1);
  });

  it("gives each statement its whole span and the word to underline", () => {
    const underlined = parse(FULL).statements.map(({ head }) => FULL.slice(head.start, head.end));
    assert.deepEqual(underlined, [
      ..."plan units bed sill head field nose saw mortar grout sealant back plumbing rules allow".split(
        " ",
      ),
    ]);
    for (const { start, end } of parse(FULL).statements) {
      assert.match(FULL.slice(start, end), /^[a-z][^]*[^\s]$/);
    }
  });
});
