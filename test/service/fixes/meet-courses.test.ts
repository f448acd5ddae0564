import assert from "node:assert/strict";
import { cornerPlan } from "./corner-plan.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "corner/courses-miss";
const CENTRED = "    across tile centred on wall\n";

describe("courses that miss at a corner", () => {
  it("are brought to the other wall's, in its own words", () => {
    const text = cornerPlan(`${CENTRED}    up joint at line\n`, `${CENTRED}    up joint at 31\n`);
    const mended = mend(text, CODE, /meet those of back: up joint at line$/);
    assert.ok(!mended.codes.includes(CODE));
    assert.equal(mended.text.match(/up joint at line\n/g)!.length, 2);
  });

  it("are brought to a joint at the same height where the other wall starts in another way", () => {
    const text = cornerPlan(
      `${CENTRED}    up full course from top\n`,
      `${CENTRED}    up joint at 31\n`,
    );
    const mended = mend(text, CODE, /up joint at /);
    assert.ok(!mended.codes.includes(CODE), mended.text);
  });

  it("are brought there where they were left to the solver", () => {
    const text = cornerPlan(`${CENTRED}    up joint at 30\n`, "");
    const mended = mend(text, CODE, /up joint at 30$/);
    assert.ok(!mended.codes.includes(CODE), mended.text);
    assert.equal(mended.fix.preferred, true);
  });

  it("stay where no start brings them together", () => {
    const text = cornerPlan(`${CENTRED}    up joint at 30\n`, `${CENTRED}    up joint at 30\n`);
    const other = text.replace(/(left corner[^]*joint )1\/16/, "$11/8");
    assert.equal(mendsOf(other, CODE).filter(({ title }) => title.includes("meet")).length, 0);
    assert.equal(mendsOf(other, CODE).length, 1);
  });
});
