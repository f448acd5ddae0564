import assert from "node:assert/strict";
import { polePage } from "../../../src/sheets/paper/pole-page.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, wallOf } from "./sheet-bench.js";

describe("the page of story poles", () => {
  const ground = benchGround(wallText());
  const page = polePage(ground, wallOf(ground))!;
  const poles = page.blocks.flatMap((block) => (block.kind === "pole" ? [block] : []));

  it("has an upright and a level pole that hold all their marks", () => {
    assert.deepEqual(
      poles.map(({ direction }) => direction),
      ["up", "across"],
    );
    for (const { from, to, marks } of poles) {
      assert.ok(marks.length > 5);
      assert.ok(marks.every(({ at }) => at >= from && at <= to));
      assert.deepEqual(
        marks.map(({ at }) => at),
        marks.map(({ at }) => at).sort((a, b) => a - b),
      );
    }
  });

  it("asks to check the printed scale", () => {
    const [first] = page.blocks;
    assert.ok(first?.kind === "text");
    assert.match(first.text, /hold a tape against the scale/);
  });

  it("is none where nothing is laid", () => {
    const bare = benchGround('wall back "Bare" {\n  size 10 x 10\n}');
    assert.equal(polePage(bare, wallOf(bare)), null);
  });

  it("has the courses that are still to come where some are set", () => {
    const set = benchGround(wallText({ set: "courses 1 to 2" }));
    const [up] = polePage(set, wallOf(set))!.blocks.flatMap((block) =>
      block.kind === "pole" ? [block] : [],
    );
    const marks = up!.marks.map(({ what }) => what);
    assert.ok(marks.includes("course 3 bottom"));
    assert.ok(!marks.some((what) => what.startsWith("course 2")));
  });
});
