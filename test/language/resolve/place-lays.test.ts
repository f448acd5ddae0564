import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { solveClean, solveText } from "../../support/solve-text.js";
import { PANEL, STACKED, wallOfLays } from "./lays-text.js";

const LAID = "bond stack\n joint 0\n across full tile from left";

function codes(text: string): string[] {
  return solveText(text)
    .diagnostics.filter(({ code }) => code.startsWith("plan/"))
    .map(({ code, message }) => `${code} ${message}`);
}

describe("several lays on a wall", () => {
  it("stand on each other in a list of courses, the bond going on over what is between", () => {
    const { lays } = solveClean(STACKED).solved.walls[0]!;
    const inch = (nm: number) => nm / NM_PER.inch;
    assert.deepEqual(
      lays.map(({ lay, region: { bounds }, below }) => [
        lay.name,
        inch(bounds.bottom),
        inch(bounds.top),
        below,
      ]),
      [
        ["field", 0, 8, 0],
        ["liner", 8, 9, 2],
        ["field-2", 9, 24, 3],
      ],
    );
    assert.equal(lays[2]!.lay.goesOnFrom, "field");
  });

  it("leave the rest of the wall round a panel to the one that says no place", () => {
    const { lays } = solveClean(PANEL).solved.walls[0]!;
    assert.deepEqual(
      lays.map(({ lay, idPrefix }) => [lay.name, lay.area === null, idPrefix]),
      [
        ["field", true, "back"],
        ["liner", false, "back/liner"],
      ],
    );
  });

  it("go on over what is set of them: one lay in two parts, its numbers and names what they were", () => {
    const set = (lines: string) =>
      solveClean(wallOfLays(`lay field {\n ${LAID}\n up full course from bottom\n ${lines}\n}`));
    const { lays } = set("set courses 1 to 2").solved.walls[0]!;
    assert.deepEqual(
      lays.map(({ lay, below, idPrefix }) => [lay.name, lay.area!.rest, below, idPrefix]),
      [
        ["field", true, 0, "back"],
        ["field over course 2", true, 2, "back"],
      ],
    );
    assert.equal(set("set courses 1 to 6").solved.walls[0]!.lays.length, 1, "all of it is set");
  });

  it("keep the rest of the wall last, whatever of it is set", () => {
    const dado = `lay liner {\n ${LAID}\n up full course from bottom\n covers bottom to 8\n}`;
    const field = `lay field {\n ${LAID}\n up full course from bottom\n set courses 1 to 2\n}`;
    for (const lays of [`${field}\n${dado}`, `${dado}\n${field}`]) {
      const walls = solveClean(wallOfLays(lays)).solved.walls[0]!.lays;
      const low = walls.map(({ lay, region: { bounds } }) => [
        lay.name,
        bounds.bottom / NM_PER.inch,
      ]);
      assert.deepEqual(
        new Map(low as [string, number][]),
        new Map([
          ["field", 8],
          ["field over course 2", 16],
          ["liner", 0],
        ]),
      );
    }
  });

  it("is told where it is set and its start is left open; nothing of it is set then", () => {
    const open = (lines: string) =>
      wallOfLays(`lay field {\n bond stack\n ${lines}\n set courses 1 to 2\n}`);
    assert.deepEqual(codes(open("joint 0 to 1/8")), [
      "plan/set-open found courses 1 to 2 set where the plan leaves `across`, `up`, the joint to the solver, " +
        "wanted it written down as they were set",
    ]);
    assert.equal(solveText(open("joint 0")).solved.walls[0]!.lays[0]!.stand, null);
  });

  it("is told where two of them want the rest, and the first has it", () => {
    const text = wallOfLays(`lay field {\n ${LAID}\n}\nlay liner {\n ${LAID}\n}`);
    assert.deepEqual(codes(text), [
      "plan/lay-twice found a second `lay` that has the rest of the wall, wanted `covers`, `over`, " +
        "`under`, `courses`, or `at` and `size` in one of them",
    ]);
    assert.equal(solveText(text).solved.walls[0]!.lays.length, 1);
  });

  it("is told where one stands on itself, on none, or in a circle", () => {
    const over = (a: string, b: string) =>
      wallOfLays(`lay field {\n ${LAID}\n over ${a}\n}\nlay liner {\n ${LAID}\n over ${b}\n}`);
    const [itself] = codes(over("field", "field"));
    assert.match(itself!, /^plan\/name-unknown found the lay `field` itself/);
    const [none] = codes(over("dado", "field"));
    assert.match(none!, /^plan\/name-unknown found no lay called `dado`/);
    const circle = codes(over("liner", "field"));
    assert.match(
      circle.join(),
      /^plan\/lay-circle found lays that stand on each other in a circle/,
    );
    assert.equal(solveText(over("liner", "field")).solved.walls[0]!.lays.length, 2);
  });
});
