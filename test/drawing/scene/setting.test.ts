import assert from "node:assert/strict";
import { settingOf } from "../../../src/drawing/scene/setting.js";
import { planOf, solvedOf, wallText } from "../support/scene-of.js";

const setting = (text: string) => settingOf(solvedOf(text).plan);
const sized = (size: string) => planOf(wallText().replace("40 x 30", size));

describe("the setting of a picture", () => {
  it("has the text and the rows of the plan's arrangement", () => {
    assert.equal(setting(sized("60 x 96")).em, 40);
    assert.deepEqual(setting(sized("60 x 96")).rows, [1]);
  });

  it("names lengths in the plan's unit, without saying it each time", () => {
    assert.equal(setting(sized("60 x 96")).length(149_225_000), "5 7/8");
    const metric = planOf(wallText().replace("40 x 30", "600 x 900"), "mm");
    assert.equal(setting(metric).length(149_200_000), "149.2");
    assert.equal(setting(planOf(wallText(), "foot")).length(342_900_000), `1' 1 1/2"`);
  });

  it("arranges the walls that are shown, where they are not all of the plan's", () => {
    const walls = [wallText().replace("40 x 30", "600 x 96"), wallText("", "other")];
    const { plan } = solvedOf(planOf(walls.join("\n")));
    assert.deepEqual(settingOf(plan, plan.walls.slice(1)).rows, [1]);
    assert.ok(settingOf(plan, plan.walls.slice(1)).em < settingOf(plan).em);
  });

  it("holds a plan without walls", () => {
    assert.ok(setting("").em > 0);
  });
});
