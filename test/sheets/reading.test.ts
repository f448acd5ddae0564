import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { layReading } from "../../src/sheets/reading.js";
import { firstWall, solveClean } from "../support/solve-text.js";

const inch = NM_PER.inch;

/** A wall whose tile covers the bench's left end. */
const SIDE = `wall side "Side" {
  size 10 x 10
  right corner back over movement 1/8
  lay field {
    bond stack
    joint 1/8
  }
}
`;

/** Two columns of 4 in tiles under a slope, no joints at the sides. */
const SLOPED = `plan "Sloped"
units inch
bed 1/8
tile field "4 x 4" {
  face 4 x 4
  thickness 3/8
}
wall back "Back" {
  outline 0, 0 to 8 1/8, 0 to 8 1/8, 8 1/8 to 0, 12
  bottom free
  left free
  right free
  top free
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
`;

/** A bench of 4 in tiles, no joints at its sides, in a stack bond from the lower left. */
function reading(size: string, more = "", left = "left free"): ReturnType<typeof layReading> {
  const { wall, laid } = firstWall(
    solveClean(`plan "Bench"
units inch
bed 1/8
tile field "4 x 4" {
  face 4 x 4
  thickness 3/8
}
wall back "Back" {
  size ${size}
  bottom free
  ${left}
  right free
  top free
  ${more}
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
${left.includes("side") ? SIDE : ""}`),
  );
  return layReading(wall.wall, laid);
}

describe("layReading", () => {
  it("counts courses, pieces and cuts", () => {
    const whole = { courses: 2, pieces: 4, cuts: 0, smallest: null };
    assert.deepEqual(reading("8 1/8 x 8 1/8"), whole);
    const { courses, pieces, cuts } = reading("10 1/4 x 8 1/8");
    assert.deepEqual({ courses, pieces, cuts }, { courses: 2, pieces: 6, cuts: 2 });
  });

  it("finds the cut piece with the smallest side that is cut", () => {
    assert.deepEqual(reading("10 1/4 x 9 1/4").smallest, {
      piece: "back/3/1",
      width: 4 * inch,
      height: inch,
    });
    assert.deepEqual(reading("9 1/4 x 10 1/4").smallest, {
      piece: "back/1/3",
      width: inch,
      height: 4 * inch,
    });
  });

  it("measures what another wall's tile leaves to be seen", () => {
    // The side wall's tile and bed hide 1/2 in; the back wall's own soft joint is 1/8 in.
    const { smallest } = reading("8 1/4 x 4", "", "left corner side under movement 1/8");
    assert.deepEqual(smallest, null, "a whole tile that is partly hidden is not cut");
  });

  it("measures a piece along an outline's slope by its bounds, as the rules do", () => {
    // The top falls from 12 to 8 1/8 in over 8 1/8 in: the corner of the left tile of course 3 stands 4 in high.
    const { laid, wall } = firstWall(solveClean(SLOPED));
    const { smallest } = layReading(wall.wall, laid);
    assert.equal(smallest?.piece, "back/3/2");
    assert.ok(smallest.height > inch && smallest.height < 2 * inch, `${smallest.height}`);
  });

  it("knows no smallest cut where only a notch is cut", () => {
    const { cuts, smallest } = reading("4 x 4", "hole valve at 2, 2 across 1");
    assert.equal(cuts, 1);
    assert.equal(smallest, null);
  });
});
