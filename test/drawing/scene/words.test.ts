import assert from "node:assert/strict";
import { edgeWords, layWords, wallSentence, wallTitle } from "../../../src/drawing/scene/words.js";
import { settingOf } from "../../../src/drawing/scene/setting.js";
import { planOf, solvedOf, solvedWallOf, wallText } from "../support/scene-of.js";

describe("the picture's words", () => {
  it("say what a corner does to either wall", () => {
    const plan = solvedOf(
      planOf(
        [
          wallText("  right corner other over movement 1/8"),
          wallText("  left corner back under movement 1/8", "other").replace("Back", "Other"),
        ].join("\n"),
      ),
    );
    const setting = settingOf(plan.plan);
    const [back, other] = plan.walls.map(({ wall }) => wall);
    assert.equal(
      edgeWords(back!.edges.right, setting),
      "corner: covers the edge of Other wall, soft joint 1/8",
    );
    assert.equal(
      edgeWords(other!.edges.left, setting),
      "corner: Back wall covers this edge, soft joint 1/8",
    );
  });

  it("say every start", () => {
    const window = "  window w {\n    at 10, 8\n    size 14 x 12\n    movement 1/8\n  }";
    for (const [across, up, told] of [
      ["tile centred on wall", "joint at 9", "Across: tile centred on the wall. Up: joint at 9."],
      [
        "joint centred on w",
        "full course over w",
        "Across: joint centred on w. Up: full course over w.",
      ],
      [
        "tile centred at 7 1/2",
        "full course from top",
        "Across: tile centred at 7 1/2. Up: full course from the top.",
      ],
    ]) {
      const lay = `    bond stack\n    joint 1/8\n    across ${across}\n    up ${up}`;
      const { solved, setting } = solvedWallOf(planOf(wallText(window, "back", lay)));
      assert.equal(layWords(solved, setting)[1], told);
      assert.match(layWords(solved, setting)[0]!, /stack bond, joint 1\/8$/);
    }
  });

  it("fall back on a wall's name, and count", () => {
    const { solved, setting } = solvedWallOf(planOf(wallText().replace(' "Back wall"', "")));
    assert.equal(wallTitle(solved.wall), "back");
    assert.match(wallSentence(solved, setting), /^40 across, 30 up; 10 courses, \d+ pieces\.$/);
  });

  it("say of what goes on over set courses no more than that and its joint", () => {
    const lay =
      "    bond stack\n    joint 1/8\n    across full tile from left\n" +
      "    up full course from bottom\n    set courses 1 to 2";
    const { solved, setting } = solvedWallOf(planOf(wallText("", "back", lay)));
    const words = layWords(solved, setting);
    assert.equal(words.length, 4);
    assert.match(words[2]!, /^Set already: courses 1 to 2, the top at .* as planned\.$/);
    assert.match(words[3]!, /^Over them the bond goes on, joint 1\/8\.$/);
  });
});
