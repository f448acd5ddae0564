import assert from "node:assert/strict";
import { layRound, topLay } from "../../../src/solver/whole-tiles/lay-round.js";
import type { SolvedWall } from "../../../src/solver/index.js";
import { solveClean } from "../../support/solve-text.js";
import { bench, STATED, TWO_LAYS } from "../../sheets/options/bench.js";

const round = (wall: SolvedWall, name: string): string | undefined => {
  const { openings, holes } = wall.wall;
  return layRound(
    wall,
    [...openings, ...holes].find((each) => each.name === name)!,
  )?.lay.name;
};

describe("the lay that an opening lies in", () => {
  it("is the wall's own where it has one", () => {
    const { wall } = bench(STATED);
    assert.equal(round(wall, "shelf"), "field");
    assert.equal(round(wall, "tap"), "field");
  });

  it("is the one that stands at its height where lays stand on each other", () => {
    const { wall } = bench(TWO_LAYS);
    assert.equal(round(wall, "low"), "dado");
    assert.equal(round(wall, "shelf"), "field");
    assert.equal(round(wall, "tap"), "field");
    assert.equal(topLay(wall)?.lay.name, "field");
  });

  it("is the one that has more of it where it reaches over two", () => {
    const at = (y: string): SolvedWall =>
      bench(TWO_LAYS.replace("at 12 3/8, 40 3/4", `at 12 3/8, ${y}`)).wall;
    // The field begins at 32 1/2, and the niche is 4 1/8 high: its middle is over that line, or under it.
    assert.equal(round(at("31"), "shelf"), "field");
    assert.equal(round(at("30"), "shelf"), "dado");
  });

  it("is a panel, not the lay round it", () => {
    const text = TWO_LAYS.replace(
      / {2}lay dado \{[\s\S]*$/,
      `  lay dado {
    at 8 1/8, 32
    size 17 x 24
    bond stack
    joint 1/8
  }
  lay field {
    bond stack
    joint 1/8
  }
}
`,
    );
    const [wall] = solveClean(text).solved.walls;
    assert.equal(round(wall!, "shelf"), "dado");
    assert.equal(round(wall!, "low"), "field");
    assert.equal(topLay(wall!)?.lay.name, "field");
  });

  it("is none where no tile is", () => {
    const [wall] = solveClean(STATED.replace(/ {2}lay field \{[^}]*\}\n/, "")).solved.walls;
    assert.equal(round(wall!, "shelf"), undefined);
    assert.equal(topLay(wall!), null);
  });
});
