import assert from "node:assert/strict";
import { NM_PER, readLength } from "../../../src/measure/index.js";
import { levelMarks, uprightMarks } from "../../../src/sheets/setting-out/pole-marks.js";
import { solveClean } from "../../support/solve-text.js";
import { inches, laid, wallText } from "./plans.js";

function upright(text = wallText()) {
  return uprightMarks({ ...laid(text), units: "inch" });
}

const SASH = "  window sash {\n    at 14, 9\n    size 10 x 7\n    movement 1/8\n  }";

describe("the upright story pole", () => {
  it("has the level line, and each course's bottom and top as running heights", () => {
    const marks = upright();
    assert.deepEqual(
      marks.slice(0, 5).map(({ what, reading }) => [what, reading]),
      [
        ["level line", "0 in (0 mm)"],
        ["course 1 bottom", "1/8 in (3.2 mm)"],
        ["course 1 top", "4 1/8 in (104.8 mm)"],
        ["course 2 bottom", "4 1/4 in (108 mm)"],
        ["course 2 top", "8 1/4 in (209.6 mm)"],
      ],
    );
  });

  it("leaves out what lies past the tile: the top of a course that the ceiling cuts", () => {
    // Six courses from 1/8: the last runs from 20 3/4 to 24 3/4, and the tile ends at 23 7/8.
    const marks = upright().map(({ what }) => what);
    assert.ok(marks.includes("course 6 bottom"));
    assert.ok(!marks.includes("course 6 top"));
  });

  it("marks where the tile ends under an opening and begins over it", () => {
    const openings = upright(wallText({ inside: SASH })).filter(
      ({ weight }) => weight === "opening",
    );
    assert.deepEqual(
      openings.map(({ at, what }) => [at, what]),
      [
        [inches(8.875), "tile ends under sash"],
        [inches(16.125), "tile begins over sash"],
      ],
    );
  });

  it("reads no mark farther from its exact height than half of 1/32 in, at course 60 too", () => {
    // A module of 22.44 mm is no fraction of an inch: rounded and added up, course 60 would be 1/2 in off.
    const plan = `units mm
tile thin "odd tile" {
  face 50.37 x 20.41
  thickness 5
}
wall tall "Tall wall" {
  size 400 x 1400
  lay thin {
    bond stack
    joint 2.03
    across full tile from left
    up full course from bottom
  }
}
`;
    const { solved } = solveClean(plan);
    const [wall] = solved.walls;
    const [lay] = wall!.lays;
    assert.ok(lay!.courses.length >= 60);
    const marks = uprightMarks({ lay: lay!, units: "inch" });
    const last = marks.find(({ what }) => what === "course 60 bottom")!;
    const [first] = lay!.courses;
    assert.equal(last.at, first!.bottom + 59 * 22_440_000);
    for (const { at, reading } of marks) {
      const [, inch, mm] = /^(.*?)[+-]? in \((.*) mm\)$/.exec(reading)!;
      assert.ok(2 * Math.abs(read(inch!, "inch") - at) <= NM_PER.inch / 32, reading);
      assert.ok(2 * Math.abs(read(mm!, "mm") - at) <= NM_PER.mm / 10, reading);
    }
  });
});

function read(text: string, unit: "inch" | "mm"): number {
  const answer = readLength(text, unit);
  assert.ok(answer.ok, text);
  return answer.nm;
}

describe("the level story pole", () => {
  it("has the tiles' sides in course 1, from the left end of the bare wall", () => {
    const marks = levelMarks({ ...laid(wallText()), units: "inch" });
    assert.deepEqual(
      marks.slice(0, 4).map(({ what, reading }) => [what, reading]),
      [
        ["left end of the bare wall", "0 in (0 mm)"],
        ["course 1, tile 1 left", "1/8 in (3.2 mm)"],
        ["course 1, tile 1 right", "4 1/8 in (104.8 mm)"],
        ["course 1, tile 2 left", "4 1/4 in (108 mm)"],
      ],
    );
    assert.ok(marks.every(({ what }) => !what.startsWith("course 2")));
  });

  it("has those of course 2 too where the bond shifts it, and where openings stand", () => {
    const text = wallText({ bond: "running 1/2", inside: SASH });
    const marks = levelMarks({ ...laid(text), units: "inch" });
    const second = marks.find(({ what }) => what === "course 2, tile 2 left")!;
    // Half a module on from course 1's first tile.
    assert.equal(second.at, inches(0.125 + 4.125 / 2));
    assert.deepEqual(
      marks.filter(({ weight }) => weight === "opening").map(({ at }) => at),
      [inches(13.875), inches(24.125)],
    );
  });
});
