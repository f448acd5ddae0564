import assert from "node:assert/strict";
import { wholeTilesText } from "../../../src/sheets/options/whole-tiles-text.js";
import { bench, STATED } from "./bench.js";

function told(text: string): string {
  const { wall } = bench(text);
  return [...wholeTilesText(wall, wall.lays[0]!, "inch")].join("");
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

  it("is silent where there is nothing to work back to", () => {
    const plain = STATED.replace(/ {2}niche[^}]*}\n/, "").replace(/ {2}hole.*\n/, "");
    const measured = plain.replace("top ceiling", "top ceiling measured 0: 0, 30: 1/4");
    assert.equal(told(measured), "");
  });
});
