import assert from "node:assert/strict";
import { wholeTilesText } from "../../../src/sheets/options/whole-tiles-text.js";
import { bench, STATED, TWO_LAYS } from "./bench.js";

function told(text: string): string {
  const { wall } = bench(text);
  return [...wholeTilesText(wall, "inch")].join("");
}

describe("wholeTilesText", () => {
  it("tells openings, holes and the wall's top, worked back from the tile", () => {
    const text = told(STATED);
    assert.match(text, /^\n {2}worked back from the tile, its start as it is written:\n/);
    assert.match(text, /\n {4}niche shelf: off the joints; on them at /);
    assert.match(
      text,
      /\n {6}its sizes of whole tiles: across 6 1\/8 in \(1 tile\), 12 1\/4 in \(2\); up 3 1\/8 in \(1/,
    );
    assert.match(
      text,
      /\n {4}hole tap: middle of a tile at 9 1\/4 in, 4 3\/4 in; middle of a joint/,
    );
    assert.match(text, /\n {4}the wall: its last course would be whole with the top at /);
  });

  it("works back from the tile of the lay that each thing lies in, where a wall has several", () => {
    const [dado, field] = told(TWO_LAYS)
      .split("\n\n")
      .map((part) => part.trim());
    // 8 1/8 of module: one whole dado tile takes 8 and the joint at each side, 8 1/4.
    assert.match(dado!, /^worked back from the tile of dado, its start as it is written:\n/);
    assert.match(dado!, /niche low: .*\n.*its sizes of whole tiles: across 8 1\/4 in \(1 tile\)/);
    assert.doesNotMatch(dado!, /shelf|tap|the wall/);
    // Two field tiles and their joint take 8 1/8, with the joints at both sides 8 3/8.
    assert.match(field!, /^worked back from the tile of field/);
    assert.match(field!, /niche shelf: [^]*across 4 1\/4 in \(1 tile\), 8 3\/8 in \(2\)/);
    // Courses of 2 1/8 from 32 1/2: the 14th ends at 32 1/2 + 13 x 2 1/8 + 2 = 62 1/8, the next at 64 1/4.
    assert.match(
      field!,
      /the wall: its last course would be whole with the top at 62 1\/8 in or 64 1\/4 in/,
    );
    assert.doesNotMatch(field!, /low/);
  });

  it("has the heights of what stands before the wall", () => {
    const seat = "  bench seat {\n    at 1\n    size 6 x 5\n    movement 1/8\n  }\n  hole tap";
    assert.match(
      told(STATED.replace("  hole tap", seat)),
      /bench seat: courses would begin whole over it with its top at /,
    );
  });

  it("is silent where there is nothing to work back to", () => {
    const plain = STATED.replace(/ {2}niche[^}]*}\n/, "").replace(/ {2}hole.*\n/, "");
    const measured = plain.replace("top ceiling", "top ceiling measured 0: 0, 30: 1/4");
    assert.equal(told(measured), "");
  });
});
