import assert from "node:assert/strict";
import { wallText } from "../../rules/wall-text.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "edge/bare";

const trim = (name: string, thickness: string) =>
  `trim ${name} {\n face 6 x 1/2\n thickness ${thickness}\n}\n`;
const plan = (edges: string, trims = "") =>
  wallText({
    size: "26 x 24",
    plan: trims,
    edges,
    start: "across full tile from left\nup full course from bottom",
  });
const RIGHT =
  "left wall movement 1/8\nright free\nbottom floor movement 1/8\ntop ceiling movement 1/8";

describe("a cut edge that is left bare", () => {
  it("is ended with a trim of the plan, the nearest to flush first", () => {
    const text = plan(RIGHT, trim("thick", "1/2") + trim("thin", "1/8"));
    const titles = mendsOf(text, CODE).map(({ title }) => title);
    assert.deepEqual(titles, [
      "End the right with trim nose, 2 in wide",
      "End the right with trim thick, 1/2 in wide",
      "Allow edge/bare here",
    ]);
    const mended = mend(text, CODE, /trim nose/);
    assert.ok(mended.text.includes("right free trim nose\n"));
    assert.ok(!mended.codes.includes(CODE) && !mended.codes.includes("trim/too-thin"));
  });

  it("keeps readings and what else is said of the side", () => {
    const measured = RIGHT.replace("right free", "right free measured 0: 0, 24: 1/4   # to check");
    const mended = mend(plan(measured), CODE, /trim nose/);
    assert.ok(mended.text.includes("right free trim nose measured 0: 0, 24: 1/4   # to check\n"));
  });
});
