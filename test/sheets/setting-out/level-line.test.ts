import assert from "node:assert/strict";
import { levelLine, startCourse, workingLine } from "../../../src/sheets/setting-out/level-line.js";
import { inches, laid, wallText } from "./plans.js";

const SLOPED = { bottom: "pan measured 0: 0, 20: -1/4, 40: 1/2", up: "joint at 4" };

describe("a level line", () => {
  it("tells its height over the low and the high point of the bottom, and where they are", () => {
    const line = levelLine(laid(wallText(SLOPED)).wall, inches(3), null);
    assert.deepEqual(line.overLow, { at: inches(20), rise: inches(3.25) });
    assert.deepEqual(line.overHigh, { at: inches(40), rise: inches(2.5) });
  });

  it("lies under the high point where that is higher", () => {
    assert.equal(levelLine(laid(wallText(SLOPED)).wall, 0, null).overHigh.rise, inches(-0.5));
  });
});

describe("the working line", () => {
  it("is the bottom of the lowest course that the bottom doesn't cut", () => {
    const { plan, wall } = laid(wallText(SLOPED));
    const line = workingLine(plan, wall)!;
    assert.equal(startCourse(wall)!.number, 2);
    assert.deepEqual([line.course, line.y], [2, inches(4 + 1 / 16)]);
  });

  it("is the bottom of course 2 where course 1 is whole, since that stands too low for a line", () => {
    const { plan, wall } = laid(wallText());
    assert.equal(startCourse(wall)!.number, 1);
    assert.deepEqual(
      [workingLine(plan, wall)!.course, workingLine(plan, wall)!.y],
      [2, inches(4.25)],
    );
  });

  it("is one for all walls that have a course there", () => {
    const steep = wallText({ ...SLOPED, name: "side", bottom: "pan measured 0: 0, 40: 4 1/2" });
    const { plan, wall } = laid(wallText(SLOPED), steep);
    assert.equal(startCourse(plan.walls[1]!)!.number, 3);
    const lines = plan.walls.map((each) => workingLine(plan, each)!);
    assert.deepEqual(
      lines.map(({ y, course }) => [y, course]),
      [
        [inches(8 + 3 / 16), 3],
        [inches(8 + 3 / 16), 3],
      ],
    );
    assert.equal(startCourse(wall)!.number, 2);
  });

  it("is each wall's own where the courses don't meet", () => {
    const other = wallText({ ...SLOPED, name: "side", up: "joint at 3" });
    const { plan } = laid(wallText(SLOPED), other);
    const lines = plan.walls.map((each) => workingLine(plan, each)!);
    assert.notEqual(lines[0]!.y, lines[1]!.y);
  });

  it("is none where nothing is laid", () => {
    const { plan } = laid(wallText(), 'wall bare "Bare" {\n  size 10 x 10\n}');
    assert.equal(workingLine(plan, plan.walls[1]!), null);
  });

  it("is the bottom of the first course over what is set, and no line of other walls", () => {
    // Course 2 ends at 8 1/4 as planned; measured at 8 1/2, course 3 stands on 8 5/8.
    const set = wallText({ set: "courses 1 to 2 top 8 1/2" });
    const { plan, wall } = laid(set, wallText({ name: "side" }));
    const lines = plan.walls.map((each) => workingLine(plan, each)!);
    assert.deepEqual(
      lines.map(({ course, y }) => [course, y]),
      [
        [3, inches(8.625)],
        [2, inches(4.25)],
      ],
    );
    assert.equal(wall.lays.length, 2);
  });
});
