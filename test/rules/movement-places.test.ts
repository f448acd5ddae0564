import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { movementPlaces } from "../../src/rules/movement-places.js";
import { solveClean } from "../support/solve-text.js";
import { wallText, type WallText } from "./wall-text.js";

const places = (parts: WallText) => movementPlaces(solveClean(wallText(parts)).plan.walls[0]!);

describe("the places that want a soft joint", () => {
  it("are the edges that meet something", () => {
    const edges = "left free\nright wall movement 1/8\nbottom pan\ntop ceiling joint 1/16";
    assert.deepEqual(
      places({ edges }).map(({ name, soft, hard, narrowToo }) => [name, soft, hard, narrowToo]),
      [
        ["at the right (wall)", NM_PER.inch / 8, false, false],
        ["at the bottom (pan)", null, false, true],
        ["at the top (ceiling)", null, true, false],
      ],
    );
  });

  it("are windows and doors, but no niches", () => {
    const opening = (kind: string, x: number, more = "") =>
      `${kind} ${kind}${x} {\n at ${x}, 3\n size 3 x 3\n ${more}\n}`;
    const wall = [
      opening("window", 2, "frame nose mitre"),
      opening("niche", 12),
      opening("door", 18, "movement 1/16"),
    ].join("\n");
    assert.deepEqual(
      places({ size: "42 x 24", wall }).map(({ name, soft }) => [name, soft]),
      [
        ["between window window2 and its frame", null],
        ["at door door18", NM_PER.inch / 16],
      ],
    );
  });
});
