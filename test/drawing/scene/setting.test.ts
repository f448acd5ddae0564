import assert from "node:assert/strict";
import { settingOf } from "../../../src/drawing/scene/setting.js";
import { planOf, solvedOf, wallText } from "../support/scene-of.js";

const setting = (text: string) => settingOf(solvedOf(text).plan);
const sized = (size: string) => planOf(wallText().replace("40 x 30", size));

describe("the setting of a picture", () => {
  it("has text of a sixtieth of a tall wall, in steps of preferred numbers (ISO 3, R20)", () => {
    assert.equal(setting(sized("60 x 96")).em, 40);
    assert.equal(setting(sized("60 x 97")).em, 40);
    assert.equal(setting(sized("600 x 960")).em, 400);
  });

  it("has larger text for several walls, which are seen smaller", () => {
    const three = ["a", "b", "c"].map((name) => wallText("", name).replace("40 x 30", "44 x 96"));
    assert.ok(setting(planOf(three.join("\n"))).em > 40);
  });

  it("names lengths in the plan's unit, without saying it each time", () => {
    assert.equal(setting(sized("60 x 96")).length(149_225_000), "5 7/8");
    const metric = planOf(wallText().replace("40 x 30", "600 x 900"), "mm");
    assert.equal(setting(metric).length(149_200_000), "149.2");
    assert.equal(setting(planOf(wallText(), "foot")).length(342_900_000), `1' 1 1/2"`);
  });

  it("holds a plan without walls", () => {
    assert.ok(setting("").em > 0);
  });
});
