import assert from "node:assert/strict";
import { clearOfEdges, clearOfSoftJoints, rimsOnTile } from "../../src/rules/index.js";
import { randomFrom } from "../support/random.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { findings, wallText, type WallText } from "./wall-text.js";

const INCH = 25_400_000;
const PLAIN: WallText = { size: "60 x 30" };

const solvedOf = (hole: string, more: WallText = {}) =>
  solveClean(wallText({ ...PLAIN, wall: `hole valve at ${hole}`, ...more }));
const inInches = (places: readonly { x: number; y: number }[]) =>
  places.map(({ x, y }) => `${x / INCH}, ${y / INCH}`);

describe("where a hole is clear of soft joints", () => {
  it("is off each that it lies on, over or under it, left or right of it", () => {
    const answer = solvedOf("10, 12 across 2", { lay: "movement joint over course 4" });
    const { wall } = firstWall(answer);
    const [round] = wall.region.roundHoles;
    assert.deepEqual(inInches(clearOfSoftJoints(answer.solved, wall, round!)), [
      "10, 10.875",
      "10, 14",
    ]);
  });

  it("is nowhere that another hole has", () => {
    const answer = solvedOf("10, 12 across 2\nhole arm at 10, 9 1/2 across 2", {
      lay: "movement joint over course 4",
    });
    const { wall } = firstWall(answer);
    const round = wall.region.roundHoles.find(({ hole }) => hole.name === "valve")!;
    assert.deepEqual(inInches(clearOfSoftJoints(answer.solved, wall, round)), ["10, 14"]);
  });
});

describe("where a plate's rim lies on tile", () => {
  it("is a lap past the joint, either way", () => {
    const { wall } = firstWall(solvedOf("9, 7 3/16 across 1 plate 3 x 2"));
    assert.deepEqual(inInches(rimsOnTile(wall, wall.wall.holes[0]!)), ["9, 6.875", "9, 7.5"]);
  });
});

describe("where a hole leaves enough to its tile's edges", () => {
  it("is told as mended by the rule itself, wherever it was", () => {
    const random = randomFrom(7);
    let moved = 0;
    for (let n = 0; n < 120; n++) {
      const [x, y] = [random.integer(64, 896) / 16, random.integer(64, 416) / 16];
      const hole = (at: string) => ({ ...PLAIN, wall: `hole valve at ${at} across 1 1/4` });
      if (findings(hole(`${x}, ${y}`), "hole/near-edge").length === 0) continue;
      const answer = solvedOf(`${x}, ${y} across 1 1/4`);
      const { wall, laid } = firstWall(answer);
      const place = clearOfEdges(answer.solved, laid, wall.region.roundHoles[0]!);
      if (!place) continue;
      moved++;
      const there = `${place.x / 1e6}mm, ${place.y / 1e6}mm`;
      assert.deepEqual(findings(hole(there), "hole/near-edge"), [], `${x}, ${y} to ${there}`);
    }
    assert.ok(moved > 20, `${moved} moved`);
  });
});
