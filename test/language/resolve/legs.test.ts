import assert from "node:assert/strict";
import { INCH, told, wallOf, wallText } from "../telling.js";

describe("a leg", () => {
  it("runs down past the pan, and meets the floor unless the plan says otherwise", () => {
    const { legs } = wallOf("  leg left 6 down 4 movement 1/8\n  leg right 5 down 3 counter");
    assert.deepEqual(
      legs.map(({ side, across, down, foot }) => [
        side,
        across / INCH,
        down / INCH,
        foot.meets.kind,
      ]),
      [
        ["left", 6, 4, "floor"],
        ["right", 5, 3, "counter"],
      ],
    );
    assert.deepEqual(legs[0]!.foot.joint, { kind: "movement", width: INCH / 8 });
  });

  it("leaves the pan out beside it, and what a shorter one leaves", () => {
    const { steps } = wallOf(
      "  bottom pan movement 1/8\n  leg left 6 down 4\n  leg right 5 down 3",
    );
    assert.deepEqual(
      steps.map(({ top }) => top / INCH),
      [0, -4, -3],
    );
    const [pan] = steps;
    assert.deepEqual([pan!.left / INCH, pan!.right / INCH], [6, 55]);
    // Its inner side meets the pan, as the tile over it does.
    assert.deepEqual([pan!.meets.left!.meets.kind, pan!.meets.top!.meets.kind], ["pan", "pan"]);
  });

  const faults: Record<string, string> = {
    "leg left 0 down 4": "plan/size [0] found 0 in, wanted more than zero",
    "leg left 5 down -4": "plan/size [-4] found -4 in, wanted more than zero",
    "leg left 60 down 4":
      "plan/leg [leg] found a leg 60 in wide, wanted less than the 60 in that the wall has there",
    "leg left 5 down 4\n  leg left 6 down 4":
      "plan/leg [leg] found a second leg at the left, wanted one",
    "leg left 35 down 4\n  leg right 30 down 4":
      "plan/leg [leg] found a leg 30 in wide, wanted less than the 25 in that the wall has there",
    "bottom pan measured 0: 0, 60: 1/8\n  leg left 5 down 4":
      "plan/leg [bottom] found readings along a bottom with a leg beside it, wanted a level one; they are left out",
  };
  for (const [lines, message] of Object.entries(faults)) {
    it(`is told where it can't stand: ${lines.replaceAll("\n ", ";")}`, () => {
      assert.deepEqual(told(wallText(`  ${lines}`)), [message]);
    });
  }
});
