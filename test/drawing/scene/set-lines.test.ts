import assert from "node:assert/strict";
import { setLines } from "../../../src/drawing/scene/set-lines.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

describe("the lines along what is set", () => {
  const linesOf = (set: string, inside = "") => {
    const start =
      "bond stack\n joint 1/8\n across full tile from left\n up full course from bottom\n";
    const { solved } = solvedWallOf(planOf(wallText(inside, "back", start + set)));
    return { solved, lines: setLines(solved) };
  };

  it("are none where nothing is set", () => {
    assert.deepEqual(linesOf("").lines, []);
  });

  it("run along the top of the last course that is set, from its first piece to its last", () => {
    const { solved, lines } = linesOf("set courses 1 to 3");
    const [set] = solved.lays;
    const top = set!.courses.find(({ number }) => number === 3)!.top;
    const { left, right } = solved.region.bounds;
    const mm = (nm: number) => Math.round(nm / 1000) / 1000;
    assert.deepEqual(lines, [{ kind: "set", points: [mm(left), -mm(top), mm(right), -mm(top)] }]);
  });

  it("stop beside an opening", () => {
    const niche = "niche n {\n at 14, 6\n size 9 x 9\n movement 1/8\n }";
    const { lines } = linesOf("set courses 1 to 3", niche);
    assert.equal(lines.length, 2);
    const [[, , end], [start]] = lines.map(({ points }) => points) as [number[], number[]];
    assert.ok(end! < 14 * 25.4 && start! > 23 * 25.4);
  });

  it("are those of the last day, where courses were set on several", () => {
    const { lines } = linesOf("set courses 1 to 2\n set courses 3 to 4");
    assert.equal(lines.length, 1);
    assert.deepEqual(lines, linesOf("set courses 1 to 4").lines);
  });
});
