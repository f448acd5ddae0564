import assert from "node:assert/strict";
import type { Nm } from "../../../src/measure/index.js";
import { nearestClean } from "../../../src/solver/choose/nearest-clean.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { FAULT, judgedRegion, judgeOf, judgePiece, tileLeftOf } from "../../../src/solver/index.js";
import { latticeOf } from "../../../src/solver/lattice.js";
import { layPieces } from "../../../src/solver/pieces.js";
import { acrossOrigin, upOrigin } from "../../../src/solver/start.js";
import { inches } from "../../support/layout.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

/** A wall with a joint of 1/8 in round it and between its tiles of 6 x 3 in. */
function wallText(across: string, up: string, size = "60 x 48"): string {
  const sides = ["bottom floor", "left wall", "right wall", "top ceiling"];
  return `tile field {
  face 6 x 3
  thickness 5/16
}
wall back {
  size ${size}
${sides.map((side) => `  ${side} movement 1/8\n`).join("")}  lay field {
    bond stack
    joint 1/8
    across ${across}
    up ${up}
  }
}
`;
}

const GABLE = wallText("full tile from left", "full course from bottom").replace(
  "size 60 x 48",
  "outline 0, 0 to 60, 0 to 60, 30 to 25, 48 to 0, 40",
);

/** Where the lattice stands after the move, whole modules left out; null where there is none. */
function movedTo(text: string, direction: "across" | "up"): Nm | null {
  const answer = solveClean(text);
  const { wall, laid } = firstWall(answer);
  const clean = nearestClean(answer.plan, wall, laid, direction);
  if (!clean) return null;
  assert.equal(clean.direction, direction);
  const { ground } = fieldOf(answer.plan, wall.wall, laid.lay, laid.joint);
  const module = inches(direction === "across" ? 6 + 1 / 8 : 3 + 1 / 8);
  const at =
    clean.direction === "across"
      ? acrossOrigin(ground, clean.start)
      : upOrigin(ground, clean.start);
  return ((at % module) + module) % module;
}

// Between the joints 59 3/4 in are tiled. With nine whole tiles the ends are 4 1/2 in together, with
// eight 10 5/8 in; a piece under 2 in, a third of the tile, is a sliver.
describe("the nearest start without a sliver", () => {
  it("is the one at which the sliver is just no more, to the nanometre", () => {
    // The left end is 1 1/8 in; at 2 in the right one is 2 1/2 in.
    const text = wallText("tile centred at 4 3/8", "full course from bottom");
    assert.equal(movedTo(text, "across"), inches(2 + 1 / 4));
  });

  it("is on the other side where that is nearer", () => {
    // The left end is 7/8 in: that far away it is gone, and 2 in are more.
    const text = wallText("tile centred at 4 1/8", "full course from bottom");
    assert.equal(movedTo(text, "across"), inches(1 / 4));
  });

  it("is found up as across", () => {
    // Of 47 3/4 in fourteen whole courses leave 3 7/8 in: 3 in and a sliver of 7/8 in, or 2 7/8 in and 1 in.
    const text = wallText("full tile from left", "full course from bottom");
    assert.equal(movedTo(text, "up"), 0);
  });

  it("is the one that stands, where there is no sliver in that direction", () => {
    const text = wallText("full tile from left", "full course from bottom");
    assert.equal(movedTo(text, "across"), inches(1 / 8));
  });

  it("is none where every start leaves one", () => {
    // One inch between the joints.
    const text = wallText("full tile from left", "full course from bottom", "1 1/4 x 48");
    assert.equal(movedTo(text, "across"), null);
    assert.equal(movedTo(text, "up"), 0);
  });

  it("is found along an outline's slopes, where pieces are judged by their bounds", () => {
    for (const direction of ["across", "up"] as const) {
      const answer = solveClean(GABLE);
      const { wall, laid } = firstWall(answer);
      const { lattice, joint, lay, region } = laid;
      const judge = judgeOf(judgedRegion(wall.wall, region), lay, answer.plan.limits);
      const isClean = (by: Nm): boolean => {
        const [x, y] =
          direction === "across" ? [lattice.x + by, lattice.y] : [lattice.x, lattice.y + by];
        const moved = layPieces(region, latticeOf(lay, joint, x, y));
        const sliver = direction === "across" ? FAULT.widthSliver : FAULT.heightSliver;
        return Array.from({ length: moved.pieces.count }, (_, i) => {
          const [l, b, r, t] = moved.pieces.bounds.subarray(4 * i, 4 * i + 4);
          const tile = tileLeftOf(moved.lattice, moved.pieces.course[i]!, l!);
          return judgePiece(judge, l!, b!, r!, t!, tile) & sliver;
        }).every((fault) => fault === 0);
      };
      const module = direction === "across" ? inches(6 + 1 / 8) : inches(3 + 1 / 8);
      const at = movedTo(GABLE, direction);
      assert.ok(at !== null && !isClean(0), direction);
      const from = direction === "across" ? lattice.x : lattice.y;
      const by = (((at - from) % module) + module) % module;
      assert.ok(isClean(by), direction);
      const apart = Math.min(by, module - by);
      for (let off = 0; off < apart; off += inches(1 / 64)) {
        assert.ok(!isClean(off) && !isClean(-off), `${direction}: ${off} is nearer than ${apart}`);
      }
    }
  });
});
