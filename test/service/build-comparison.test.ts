import assert from "node:assert/strict";
import { comparisonText, compare } from "../../src/compare/index.js";
import { buildComparison } from "../../src/service/build-comparison.js";
import { Compared } from "../../src/service/compared.js";
import type { ComparisonLook, PlanComparison } from "../../src/service/index.js";
import { AFTER, BEFORE, oldPlan } from "./comparing.js";
import { stateOf } from "./state-of.js";

function comparison(
  before: string,
  after: string,
  look: ComparisonLook = { way: "sides", wall: null },
): PlanComparison {
  return buildComparison(stateOf(after), oldPlan(before), look, new Compared());
}

describe("a comparison for an editor", () => {
  it("says what the command line says", () => {
    const { sections } = comparison(BEFORE, AFTER);
    const said = sections.flatMap(({ title, lines }) => [
      title,
      ...lines.map((line) => `  ${line}`),
    ]);
    const told = comparisonText(compare(oldPlan(BEFORE).outcome, stateOf(AFTER).outcome));
    assert.equal(`${said.join("\n")}\n`, [...told].join(""));
  });

  it("names the walls that changed, each with what changed on it", () => {
    const { walls, wall } = comparison(BEFORE, AFTER);
    assert.deepEqual(
      walls.map(({ name, title }) => [name, title]),
      [["back", "Back wall"]],
    );
    assert.match(walls[0]!.headline, /cuts changed/);
    assert.equal(wall, "back");
  });

  it("has both states of the wall side by side, over one another, or apart", () => {
    const sides = comparison(BEFORE, AFTER).picture!;
    assert.ok(sides.way === "sides");
    assert.equal(sides.scene.walls.length, 2);
    const overlay = comparison(BEFORE, AFTER, { way: "overlay", wall: "back" }).picture!;
    assert.ok(overlay.way === "overlay");
    assert.deepEqual(
      overlay.scene.walls.map(({ base }) => base.name),
      ["back"],
    );
    const slider = comparison(BEFORE, AFTER, { way: "slider", wall: "back" }).picture!;
    assert.ok(slider.way === "slider");
    assert.deepEqual(
      [slider.before, slider.after].map((scene) => scene!.walls.map(({ name }) => name)),
      [["back"], ["back"]],
    );
  });

  it("looks at the wall that is asked for, else at the first that changed", () => {
    const both = AFTER.replace("size 36 x", "size 35 x");
    assert.equal(comparison(BEFORE, both, { way: "sides", wall: "side" }).wall, "side");
    assert.equal(comparison(BEFORE, both, { way: "sides", wall: "nowhere" }).wall, "back");
  });

  it("shows a wall under its new name, and a gone wall as it was", () => {
    const renamed = comparison(BEFORE, AFTER.replace("wall back", "wall rear"));
    assert.equal(renamed.wall, "rear");
    assert.ok(renamed.picture?.way === "sides" && renamed.picture.scene.walls.length === 2);
    const gone = comparison(BEFORE, BEFORE.slice(0, BEFORE.indexOf("wall side")), {
      way: "slider",
      wall: "side",
    });
    assert.deepEqual(gone.walls, [{ name: "side", title: "Side wall", headline: "gone" }]);
    assert.ok(gone.picture?.way === "slider" && gone.picture.after === null);
    assert.notEqual(gone.picture.before, null);
  });

  it("has no wall to show where nothing changed but the text", () => {
    const { headline, sections, walls, wall, picture } = comparison(BEFORE, `${BEFORE}# end\n`);
    assert.equal(headline, "nothing changed but the text");
    assert.deepEqual([sections, walls, wall, picture], [[], [], null, null]);
  });

  it("says which of both texts can't be understood whole", () => {
    const broken = BEFORE.replace("size 60 x", "size 60");
    const whole = ({ whole: now, oldWhole }: PlanComparison) => [oldWhole, now];
    assert.deepEqual(whole(comparison(BEFORE, broken)), [true, false]);
    assert.deepEqual(whole(comparison(broken, BEFORE)), [false, true]);
  });

  it("has no picture of a wall that is too large to be drawn piece by piece", () => {
    const [before, after] = [BEFORE, AFTER].map((text) =>
      text.replace("size 60 x 47", "size 600ft x 1200"),
    );
    const { wall, picture, sections } = comparison(before!, after!);
    assert.deepEqual([wall, picture], ["back", null]);
    assert.ok(sections.length > 0);
  });

  it("can be posted: nothing in it but plain data", () => {
    for (const way of ["sides", "overlay", "slider"] as const) {
      const told = comparison(BEFORE, AFTER, { way, wall: null });
      assert.deepEqual(JSON.parse(JSON.stringify(told)), structuredClone(told));
    }
  });
});
