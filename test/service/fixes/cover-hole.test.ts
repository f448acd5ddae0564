import assert from "node:assert/strict";
import { wallText } from "../../rules/wall-text.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "hole/plate-small";
const wall = (plate: string, across = "4") =>
  wallText({ wall: `  hole valve at 12, 6 across ${across} plate ${plate}` });

describe("a plate that laps too little over its hole", () => {
  it("gets a smaller hole, or is a larger one", () => {
    const cut = mend(wall("4 1/4"), CODE, /^Cut valve 3 3\/4 in across$/);
    assert.ok(cut.text.includes("across 3 3/4 plate 4 1/4\n"), cut.text);
    assert.ok(!cut.codes.includes(CODE));
    const larger = mend(wall("4 1/4"), CODE, /^Take a plate of 4 1\/2 in for valve$/);
    assert.ok(larger.text.includes("across 4 plate 4 1/2\n"), larger.text);
    assert.ok(!larger.codes.includes(CODE));
  });

  it("is wider or higher only where it is too small", () => {
    const { text, codes } = mend(wall("8 x 4"), CODE, /^Take a plate/);
    assert.ok(text.includes("plate 8 x 4 1/2\n"), text);
    assert.ok(!codes.includes(CODE));
  });

  it("leaves no hole under a plate that is too small for any", () => {
    const titles = mendsOf(wall("1/2"), CODE).map(({ title }) => title);
    assert.deepEqual(
      titles.filter((title) => title.startsWith("Cut")),
      [],
    );
  });
});
