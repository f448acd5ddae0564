import assert from "node:assert/strict";
import type { Side } from "../../../src/model/index.js";
import { boundsOf } from "../../../src/solver/index.js";
import { mitreHands } from "../../../src/takeoff/trims/mitre-hands.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

describe("the hands of mitres", () => {
  it("of a sill are as it is set, of a head the other way round, of jambs lying on their outer edge", () => {
    assert.deepEqual(mitreHands("bottom", ["left"]), ["left"]);
    assert.deepEqual(mitreHands("top", ["left"]), ["right"]);
    assert.deepEqual(mitreHands("left", ["top"]), ["left"]);
    assert.deepEqual(mitreHands("left", ["bottom"]), ["right"]);
    assert.deepEqual(mitreHands("right", ["top"]), ["right"]);
    assert.deepEqual(mitreHands("right", ["bottom"]), ["left"]);
    assert.deepEqual(mitreHands("top", ["left", "right"]), ["left", "right"]);
    assert.deepEqual(mitreHands("left", []), []);
  });

  it("are those of the piece turned until its opening is above it", () => {
    const text = `trim nose {
  face 10 x 2
  thickness 1/4
}
tile field {
  face 6 x 3
  thickness 1/4
}
wall back {
  size 60 x 60
  window sash {
    at 20, 20
    size 12 x 12
    frame nose mitre
  }
  lay field {
    bond stack
    joint 1/8
  }
}
`;
    const { wall } = firstWall(solveClean(text));
    // Quarter turns anticlockwise that bring the finished edge up.
    const turns: Readonly<Record<Side, number>> = { bottom: 0, right: 3, top: 2, left: 1 };
    let mitres = 0;
    for (const { side, pieces } of wall.trims) {
      for (const { shape, mitre } of pieces) {
        const corners = turned(shape.outline, turns[side]);
        const { left, right, top, bottom } = boundsOf(corners);
        const has = (x: number, y: number): boolean =>
          corners.some((value, i) => i % 2 === 0 && value === x && corners[i + 1] === y);
        // A mitre takes the end's upper corner, since the outer edge is the longer one.
        const hands = [...(has(left, top) ? [] : ["left"]), ...(has(right, top) ? [] : ["right"])];
        assert.ok(has(left, bottom) && has(right, bottom));
        assert.deepEqual(mitreHands(side, mitre), hands, `${side} ${mitre.join()}`);
        mitres += hands.length;
      }
    }
    assert.equal(mitres, 8);
  });
});

function turned(ring: readonly number[], quarters: number): number[] {
  let corners = [...ring];
  for (let n = 0; n < quarters; n++) {
    corners = corners.flatMap((value, i) => (i % 2 === 0 ? [-corners[i + 1]!, value] : []));
  }
  return corners;
}
