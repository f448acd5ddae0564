import assert from "node:assert/strict";
import { layoutData, wallData } from "../support/layout-data.js";
import { areMirrored, evenSketch, piecesOf } from "../support/mirrored-pieces.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY_ROOM, randomRoom, type RoomOptions } from "../support/random-room.js";
import type { Sketch } from "../support/sketch.js";
import { solveText } from "../support/solve-text.js";
import { mirrored, renamed } from "../support/turn-sketch.js";

const ROOMS = 60;
const STATED: RoomOptions = { ...ANY_ROOM, open: 0 };

/** Walls round inside and outside corners, some with outlines, legs, benches, a second lay; bonds that go on round corners. */
describe(`the layouts of ${ROOMS} random rooms`, () => {
  it("are mirrored where the room is: walls from right to left, left and right exchanged, laps kept", () => {
    let joined = 0;
    eachRoom(STATED, (sketch, told) => {
      const even = evenSketch(sketch);
      const here = solved(even);
      const turned = mirrored(even);
      const there = byName(solved({ ...turned, walls: [...turned.walls].reverse() }));
      for (const wall of here) {
        if (wall.wall.edges.left.meets.kind === "outside") joined++;
        const mirror = piecesOf(there.get(wall.wall.name)!, wall.wall.size.across);
        const pieces = piecesOf(wall, null);
        if (!areMirrored(mirror, pieces))
          assert.deepEqual(mirror, pieces, `${wall.wall.name}, ${told}`);
      }
    });
    assert.ok(joined > ROOMS / 4, `${joined} outside corners`);
  });

  it("are the same in whatever order the walls are declared", () => {
    eachRoom(ANY_ROOM, (sketch, told) => {
      const here = solved(sketch);
      const [first, ...rest] = sketch.walls;
      for (const walls of [[...sketch.walls].reverse(), [...rest, first!]]) {
        const there = byName(solved({ ...sketch, walls }));
        for (const wall of here)
          assert.deepEqual(wallData(there.get(wall.wall.name)!), wallData(wall), told);
      }
    });
  });

  it("are the same under other names", () => {
    eachRoom(ANY_ROOM, (sketch, told) => {
      assert.deepEqual(layout(renamed(sketch), "mm"), layout(sketch, "mm"), told);
    });
  });

  it("are the same nanometres in millimetres and in inches", () => {
    eachRoom(ANY_ROOM, (sketch, told) => {
      assert.deepEqual(layout(sketch, "inch"), layout(sketch, "mm"), told);
    });
  });
});

function eachRoom(options: RoomOptions, test: (sketch: Sketch, told: string) => void): void {
  for (let seed = 0; seed < ROOMS; seed++) {
    const sketch = randomRoom(seed, { ...options, most: 5 });
    test(sketch, `seed ${seed}\n${printSketch(sketch, "mm")}`);
  }
}

/** Every solved room is held to all laws as well. */
function solved(sketch: Sketch) {
  return solveText(printSketch(sketch, "mm")).solved.walls;
}

function byName(walls: ReturnType<typeof solved>) {
  return new Map(walls.map((wall) => [wall.wall.name, wall]));
}

function layout(sketch: Sketch, units: "inch" | "mm"): unknown {
  return layoutData(solveText(printSketch(sketch, units)).solved);
}
