import assert from "node:assert/strict";
import { INCH, told, wallOf, wallText } from "../telling.js";

function toldOf(lines: string): string[] {
  return told(wallText(lines));
}

describe("a hole", () => {
  it("has a middle and a diameter", () => {
    const [hole] = wallOf("  hole valve at 30, 44 across 4 1/2").holes;
    assert.deepEqual(
      [hole!.name, hole!.at, hole!.across],
      ["valve", { x: 30 * INCH, y: 44 * INCH }, 4.5 * INCH],
    );
  });

  it("may have a round plate, or one with four sides", () => {
    const plate = (text: string) =>
      wallOf(`  hole v at 30, 44 across 4 plate ${text}`).holes[0]!.plate;
    assert.deepEqual(plate("6 1/2"), { kind: "round", across: 6.5 * INCH });
    assert.deepEqual(plate("6 1/2 x 4"), { kind: "square", across: 6.5 * INCH, up: 4 * INCH });
    assert.deepEqual(plate("6x4"), { kind: "square", across: 6 * INCH, up: 4 * INCH });
    assert.equal(wallOf("  hole v at 30, 44 across 4").holes[0]!.plate, null);
  });

  it("is cut all the same where its plate can't be understood", () => {
    const text = "  hole v at 30, 44 across 4 plate 0 x 4";
    assert.match(toldOf(text)[0]!, /\[0\] found/);
    assert.equal(wallOf(text).holes[0]!.plate, null);
  });

  it("may touch the wall's sides, but not reach over them", () => {
    assert.deepEqual(toldOf("  hole v at 2, 2 across 4\n  hole w at 58, 94 across 4"), []);
    assert.deepEqual(toldOf("  hole v at 2, 2 across 4.000001"), [
      "plan/hole-outside [v] found a hole 4+ in across at 2 in, 2 in, wanted it inside the wall of 60 in x 96 in",
    ]);
    assert.deepEqual(wallOf("  hole v at 2, 2 across 4.000001").holes, []);
  });

  it("may touch an opening, but not reach into it", () => {
    const niche = "  niche n {\n    at 10, 10\n    size 10 x 10\n  }\n";
    assert.deepEqual(toldOf(`${niche}  hole v at 8, 15 across 4`), []);
    assert.deepEqual(toldOf(`${niche}  hole v at 8, 15 across 4.000001`), [
      "plan/hole-overlap [v] found `v` in `n`, wanted it in the tile",
    ]);
    assert.deepEqual(toldOf(`${niche}  hole v at 15, 15 across 1`).length, 1);
  });

  it("may touch the corner of an opening, measured on the round", () => {
    const niche = "  niche n {\n    at 10, 10\n    size 10 x 10\n  }\n";
    assert.deepEqual(toldOf(`${niche}  hole v at 7, 6 across 10`), []);
    assert.deepEqual(toldOf(`${niche}  hole v at 7, 6 across 10.000001`).length, 1);
  });

  it("may touch another hole, but not reach into it", () => {
    assert.deepEqual(toldOf("  hole v at 10, 10 across 4\n  hole w at 13, 14 across 6"), []);
    assert.deepEqual(toldOf("  hole v at 10, 10 across 4\n  hole w at 13, 14 across 6.000001"), [
      "plan/hole-overlap [w] found `w` over `v`, wanted holes apart",
    ]);
  });

  it("of nothing across is told", () => {
    assert.deepEqual(toldOf("  hole v at 10, 10 across 0"), [
      "plan/size [0] found 0 in, wanted more than zero",
    ]);
  });

  it("of a name that is taken is told", () => {
    assert.deepEqual(toldOf("  hole v at 10, 10 across 4\n  hole v at 20, 10 across 4"), [
      "plan/name-twice [v] found a hole called `v` again, wanted another name",
    ]);
  });
});
