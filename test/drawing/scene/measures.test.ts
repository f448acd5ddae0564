import assert from "node:assert/strict";
import { columnWishes, rightWish, rowWishes } from "../../../src/drawing/scene/measures.js";
import { planOf, solvedOf, solvedWallOf, wallText } from "../support/scene-of.js";
import { settingOf } from "../../../src/drawing/scene/setting.js";

function measured(inside = "", lay = "") {
  const { solved, setting } = solvedWallOf(planOf(wallText(inside, "back", lay)));
  const texts = (wishes: readonly { stretches: readonly { text: string | null }[] }[]) =>
    wishes.map(({ stretches }) => stretches.map(({ text }) => text));
  const right = rightWish(solved, setting);
  return {
    rows: texts(rowWishes(solved, setting)),
    columns: texts(columnWishes(solved, setting)),
    right: right ? texts([right])[0] : null,
    captions: rowWishes(solved, setting).map(({ caption }) => caption),
  };
}

describe("the dimensions of a wall", () => {
  it("tell the ends of course 1 and of the one that alternates with it", () => {
    const { rows, captions } = measured();
    assert.deepEqual(captions, ["course 1", "course 2", "bare wall"]);
    assert.deepEqual(rows, [
      ["6", "5 full widths", "3"],
      ["2 15/16", "5 full widths", "6"],
      ["40"],
    ]);
  });

  it("tell the ends of courses once, where courses that are set go on as they were", () => {
    const start =
      "    bond running 1/2\n    joint 1/8\n    across full tile from left\n    up full course from bottom";
    assert.deepEqual(measured("", start).captions, ["course 1", "course 2", "bare wall"]);
    const set = measured("", `${start}\n    set courses 1 to 4`);
    assert.deepEqual(set.captions, ["course 1", "course 2", "bare wall"]);
    assert.deepEqual(set.rows, measured("", start).rows);
  });

  it("tell one course of a stack bond", () => {
    const stack =
      "    bond stack\n    joint 1/8\n    across full tile from left\n    up full course from bottom";
    assert.deepEqual(measured("", stack).captions, ["course 1", "bare wall"]);
  });

  it("tell the first and last course, sill and head courses and openings", () => {
    const { columns, rows } = measured(
      "  window w {\n    at 12, 10\n    size 9 x 10\n    movement 1/8\n  }",
    );
    // Courses stand 3 1/8 in apart from 1/8 in up; the window takes 9 7/8 to 20 1/8; course 7 ends at 21 7/8.
    assert.deepEqual(columns[0], [
      "course 1: 3",
      "course 10: 1 5/8",
      "sill course: 3/8",
      "head course: 1 3/4",
    ]);
    assert.deepEqual(columns.slice(1), [["10", "10", "10"], ["30"]]);
    assert.deepEqual(rows[2], ["12", "9", "19"]);
  });

  it("tell the right end where the floor makes it differ", () => {
    const { right, columns } = measured("  bottom pan measured 0: 0, 40: 1 movement 1/8");
    assert.deepEqual(right, ["course 1: 2+"]);
    assert.deepEqual(columns[0]![0], "course 1: 3");
    assert.equal(measured().right, null);
  });

  it("put openings that overlap in a row of their own", () => {
    const niche = (name: string, x: number, y: number) =>
      `  niche ${name} {\n    at ${x}, ${y}\n    size 8 x 4\n    movement 1/8\n  }`;
    const { captions } = measured([niche("a", 6, 4), niche("b", 10, 15)].join("\n"));
    assert.equal(captions.filter((caption) => caption === "openings").length, 2);
  });

  it("tell what shows of an end that another wall's tile covers", () => {
    const plan = solvedOf(
      planOf(
        [
          wallText("  right corner other over movement 1/8"),
          wallText("  left corner back under movement 1/8", "other"),
        ].join("\n"),
      ),
    );
    const rows = rowWishes(plan.walls[1]!, settingOf(plan.plan));
    // 1/8 in of joint under 1/2 in of tile and bed: 3/8 in of the piece is hidden.
    assert.equal(rows[0]!.stretches[0]!.text, "6 (5 5/8 seen)");
  });

  it("tell where soft joints in the tile have their middles", () => {
    const start =
      "    bond stack\n    joint 1/8\n    across full tile from left\n    up full course from bottom\n";
    const soft = measured("", `${start}    movement joint at 20\n    movement joint over course 2`);
    assert.deepEqual(soft.captions, ["course 1", "soft joints", "bare wall"]);
    const plain = measured("", start);
    assert.equal(soft.columns.length, plain.columns.length + 1);
    assert.equal(soft.rows[1]!.length, 2);
  });
});
