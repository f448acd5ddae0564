import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { codesOf, mend, mendsOf } from "./mending.js";

const NARROW = "movement/narrow";
const START = "    across tile centred on wall\n    up full course from bottom\n";
const widenings = (text: string): string[] =>
  mendsOf(text, NARROW)
    .map(({ title }) => title)
    .filter((title) => title.startsWith("Widen"));

// At least 1/8 in wide: TCNA EJ171, as the rule has it.
describe("a soft joint in the tile that is too narrow", () => {
  it("is widened with all joints of its lay, upright and level", () => {
    for (const soft of ["movement joint at 30", "movement joint over course 3"]) {
      const text = wallPlan(`    joint 1/16\n${START}    ${soft}\n`);
      const { fix, text: after, codes } = mend(text, NARROW, /^Widen/);
      assert.equal(fix.title, "Widen all joints of pressed to 1/8 in");
      assert.equal(fix.preferred, false);
      assert.equal(after, text.replace("joint 1/16", "joint 1/8"));
      assert.ok(!codes.includes(NARROW));
    }
  });

  it("keeps the end of a range that is wide enough", () => {
    const text = wallPlan(`    joint 1/16 to 3/16\n${START}    movement joint over course 3\n`);
    const { text: after, codes } = mend(text, NARROW, /^Widen/);
    assert.ok(after.includes("    joint 1/8 to 3/16\n"));
    assert.ok(!codes.includes(NARROW));
  });

  it("has the width that the plan's own limit asks for", () => {
    const text = `rules { movement 1/4 }\n${wallPlan(`    joint 1/8\n${START}    movement joint at 30\n`)}`;
    assert.ok(mend(text, NARROW, /^Widen all/).text.includes("    joint 1/4\n"));
  });

  it("stays as it is over courses that are set", () => {
    const text = wallPlan(
      `    joint 1/16\n${START}    set courses 1 to 2\n    movement joint over course 5\n`,
    );
    assert.ok(codesOf(text).includes(NARROW));
    assert.deepEqual(widenings(text), []);
  });

  const over = (between: string) =>
    wallPlan(
      `    joint 1/16\n${START}    courses 4\n    movement joint over course 4\n  }\n  lay pressed {\n    bond stack\n    joint 1/16\n    across tile centred on wall\n    over pressed\n${between}`,
    );

  it("is widened over a lay's last course, unless it is said how wide the joint between lays is", () => {
    const { codes } = mend(over(""), NARROW, /^Widen all joints of pressed/);
    assert.ok(!codes.includes(NARROW));
    assert.ok(codesOf(over("    between 1/16\n")).includes(NARROW));
    assert.deepEqual(widenings(over("    between 1/16\n")), []);
  });
});
