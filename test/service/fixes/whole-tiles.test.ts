import assert from "node:assert/strict";
import { edited, Plans } from "../plans.js";

/** Courses of 50 mm with joints of 2 from 0 up, tiles of 100 from the left. */
const plan = (
  wall: string,
  start = "up full course from bottom",
  top = "free",
): string => `plan "rests"
units mm
tile field {
  face 100 x 50
  thickness 8
}
wall back {
  size 600 x 400
  left free
  bottom free
  top ${top}
${wall}
  lay field {
    bond stack
    joint 2
    across full tile from left
    ${start}
  }
}
`;

/** What a text is after the rewrite of that title, asked for at the line that holds some words. */
function rewritten(text: string, at: string, title: RegExp): string {
  const plans = new Plans();
  const line = text.slice(0, text.indexOf(at)).split("\n").length - 1;
  const range = { start: { line, character: 4 }, end: { line, character: 4 } };
  const fixes = plans.service.fixes(plans.open(text), range);
  const fix = fixes.find((each) => title.test(each.title));
  assert.ok(
    fix,
    `a fix called ${String(title)} among ${fixes.map((each) => each.title).join("; ")}`,
  );
  assert.equal(fix.mends, null);
  return edited(text, fix.edits);
}

describe("rewrites to whole tiles", () => {
  it("move a hole to the middle of a tile or of a joint", () => {
    const text = plan("  hole valve at 140, 80 across 20");
    // The second tile of the second course runs from 102 to 202 and from 52 to 102 mm.
    const tile = rewritten(
      text,
      "hole valve",
      /^Move valve to the middle of a tile: 152 mm, 77 mm/,
    );
    assert.ok(tile.includes("hole valve at 152, 77 across 20\n"), tile);
    const joint = rewritten(
      text,
      "hole valve",
      /^Move valve to the middle of a joint: 152 mm, 103 mm|51 mm/,
    );
    assert.match(joint, /hole valve at 152, (103|51) across 20\n/);
  });

  it("let courses begin over a bench and end under a soffit", () => {
    const bench = plan("  bench seat {\n    at 100\n    size 200 x 140\n    movement 3\n  }");
    assert.ok(rewritten(bench, "bench seat", /its top at 101 mm/).includes("size 200 x 101\n"));
    assert.ok(rewritten(bench, "bench seat", /its top at 153 mm/).includes("size 200 x 153\n"));
    const soffit = plan("  soffit box {\n    at 100, 290\n    size 200 x 110\n    movement 3\n  }");
    const moved = rewritten(soffit, "soffit box", /end under box: its bottom at 261 mm/);
    assert.ok(moved.includes("at 100, 261\n    size 200 x 139\n"), moved);
  });

  it("stop a free top at a whole course", () => {
    // Course 7 ends at 362 mm, course 8 at 414.
    assert.ok(rewritten(plan(""), "size 600", /its top at 362 mm/).includes("size 600 x 362\n"));
    assert.ok(rewritten(plan(""), "size 600", /its top at 414 mm/).includes("size 600 x 414\n"));
    const plans = new Plans();
    const text = plan("", undefined, "ceiling movement 3");
    const range = { start: { line: 6, character: 4 }, end: { line: 7, character: 4 } };
    const titles = plans.service.fixes(plans.open(text), range).map(({ title }) => title);
    assert.ok(!titles.some((title) => title.startsWith("Stop")));
  });

  it("write a chosen start down with it, so that the tile stays where it is", () => {
    const bench = plan("  bench seat {\n    at 100\n    size 200 x 140\n    movement 3\n  }", "");
    const text = rewritten(
      bench,
      "bench seat",
      /^Let whole courses begin over seat: .*chosen start down$/,
    );
    assert.match(text, /up (full course|joint at)/);
  });
});
