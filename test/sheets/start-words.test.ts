import assert from "node:assert/strict";
import { acrossWords, toldLength, upWords } from "../../src/sheets/start-words.js";
import { NM_PER } from "../../src/measure/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { WALL } from "./wall.js";

const { wall } = firstWall(solveClean(WALL));
const sash = wall.wall.openings[0]!;

describe("the words of a start", () => {
  it("say across as the plan would", () => {
    const tile = { kind: "tile" } as const;
    assert.equal(
      acrossWords({ kind: "full-tile", from: "left" }, "inch"),
      "across full tile from left",
    );
    assert.equal(
      acrossWords({ ...tile, centre: { on: "wall" } }, "inch"),
      "across tile centred on wall",
    );
    assert.equal(
      acrossWords({ kind: "joint", centre: { on: "opening", opening: sash } }, "inch"),
      "across joint centred on sash",
    );
    const centre = { on: "place", x: (NM_PER.inch * 81) / 64 } as const;
    assert.equal(acrossWords({ ...tile, centre }, "inch"), "across tile centred at 1 17/64");
    assert.equal(acrossWords({ ...tile, centre }, "mm"), "across tile centred at 32.146875");
  });

  it("say a place as people are told it where the plan's units can't say it exactly", () => {
    const at = (x: number) =>
      acrossWords({ kind: "tile", centre: { on: "place", x } }, "inch", toldLength);
    assert.equal(at(NM_PER.inch * 2), "across tile centred at 2");
    assert.equal(at(63_366_667), "across tile centred at 2 1/2- in");
  });

  it("say up as the plan would", () => {
    assert.equal(upWords({ kind: "full-course", from: "top" }, "inch"), "up full course from top");
    assert.equal(
      upWords({ kind: "at-opening", relation: "under", opening: sash }, "inch"),
      "up full course under sash",
    );
    assert.equal(upWords({ kind: "joint", y: 3 * NM_PER.mm }, "mm"), "up joint at 3");
  });
});
