import assert from "node:assert/strict";
import { exampleText } from "../support/examples.js";
import { Plans, wallPlan, withCursor } from "./plans.js";

const LAY = "    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n";

/** What is told where the cursor stands; the text's first match of a word gets one in its middle. */
function hoverOn(text: string, word: string, units: "plan" | "mm" = "plan"): string | null {
  const offset = text.indexOf(word);
  assert.ok(offset >= 0, word);
  const marked = `${text.slice(0, offset + 1)}|${text.slice(offset + 1)}`;
  const { text: plain, at } = withCursor(marked);
  const plans = new Plans();
  return plans.service.hover(plans.open(plain), at, units)?.text ?? null;
}

describe("hover", () => {
  it("tells a wall's size, courses, pieces, cuts by kind and the smallest cut", () => {
    const text = hoverOn(wallPlan(LAY), "back ")!;
    assert.match(text, /\*\*wall back\*\* Back wall/);
    assert.match(text, /size 60 in x 47 3\/16 in/);
    assert.match(text, /16 courses, 176 pieces, 32 cuts/);
    assert.match(text, /32 end cuts/);
    assert.match(text, /smallest cut 3 1\/8 in x 2 7\/8 in, piece back\/1\/1/);
    assert.equal(hoverOn(wallPlan(LAY), "wall back"), text);
  });

  it("tells a lay's face, module, joint, starts and end cuts", () => {
    const text = hoverOn(wallPlan(LAY), "lay pressed")!;
    assert.match(text, /face 5 7\/8 in x 2 7\/8 in, module 5 15\/16 in x 2 15\/16 in/);
    assert.match(text, /joint 1\/16 in/);
    assert.match(text, /across tile centred on wall/);
    assert.match(text, /end cuts: left 3 1\/8 in, right 3 1\/8 in/);
    assert.ok(!text.includes("(chosen)"));
  });

  it("tells of a lay what was chosen, and why", () => {
    const text = hoverOn(exampleText("back-wall.tileplan"), "lay pressed")!;
    assert.match(text, /across .*\(chosen\)/);
    assert.match(text, /up .*\(chosen\)/);
    assert.match(text, /chosen out of \d+/);
    assert.match(text, /decided by /);
    assert.match(text, /ends of course 1: .*\n.*ends of course 2: /);
  });

  it("tells what stands under, over and beside an opening", () => {
    const text = hoverOn(exampleText("niche-wall.tileplan"), "niche shelf")!;
    assert.match(text, /598 mm x 298 mm, movement joint 2 mm/);
    assert.match(text, /under it: a whole course/);
    assert.match(text, /over it: a whole course/);
    assert.match(text, /left of it: whole tiles/);
    assert.match(text, /right of it: whole tiles/);
    const sash = hoverOn(exampleText("back-wall.tileplan"), "window sash")!;
    assert.match(sash, /frame nose, mitre: outside 29 3\/4 in x 39 3\/4 in/);
    assert.match(sash, /under it: pieces .* high/);
  });

  it("tells the runs of a trim", () => {
    const text = hoverOn(exampleText("back-wall.tileplan"), "nose mitre")!;
    assert.match(text, /5 7\/8 in long, 1 7\/8 in wide, 5\/16 in thick/);
    assert.match(text, /back, bottom of sash: \d+ pieces/);
  });

  it("tells a length in the other units", () => {
    const text = hoverOn("units inch\nbed 5 7/8\n", "5 7/8")!;
    assert.equal(text, '**5 7/8 in** = 5 7/8" = 149.2 mm = 14.92 cm = 0.1492 m');
    assert.match(hoverOn("units mm\nbed 300\n", "300")!, /^\*\*300 mm\*\* = 11 13\/16- in/);
  });

  it("tells what a let comes to, where it is given and where it is used", () => {
    const plan = "units inch\nlet sill = 40 + 6 1/4\nlet head = sill + 1\n";
    assert.match(hoverOn(plan, "sill")!, /\*\*46 1\/4 in\*\* = .*1174\.8 mm/);
    assert.equal(hoverOn(plan, "sill + 1"), hoverOn(plan, "sill"));
    assert.match(hoverOn("let a = 6mm / 2mm\n", "a ")!, /\*\*3\*\*, a plain number/);
    assert.match(hoverOn("let a = a\n", "a ")!, /can't be worked out/);
  });

  it("tells a rule by its code: title, limit, and the source with its address", () => {
    const text = hoverOn('allow joint/too-narrow "why"\n', "joint/too")!;
    assert.match(text, /joint\\\/too|joint\/too\\-narrow/);
    assert.match(text, /three times the tile's variation/);
    assert.match(text, /limit: `rules { joint ... }`/);
    assert.match(text, /\(https:\/\/tileletter\.com\/what-is-minimum-grout-joint\)/);
  });

  it("tells a line of help for a word of the language, by its place", () => {
    const plan = wallPlan(LAY);
    assert.match(hoverOn(plan, "bond")!, /courses stand over one another/);
    assert.match(hoverOn(plan, "joint 1/16")!, /range for the solver/);
    assert.match(hoverOn(plan, "ceiling")!, /ceiling/);
    assert.match(hoverOn("tile a {\n  face 1 x 2\n}\n", "face")!, /real face as laid/);
  });

  it("tells figures in millimetres where those are wanted", () => {
    assert.match(hoverOn(wallPlan(LAY), "back ", "mm")!, /size 1524 mm x 1198\.6 mm/);
  });

  it("tells nothing in comments, in texts and in a broken name", () => {
    assert.equal(hoverOn("bed 1 # wall of a bed\n", "wall of"), null);
    assert.equal(hoverOn('plan "wall of mine"\n', "wall of"), null);
    assert.equal(hoverOn("bed nothing\n", "nothing"), null);
  });

  it("escapes what a person wrote", () => {
    const text = hoverOn(wallPlan(LAY).replace("Back wall", "[x](http://a) <b>*"), "back ")!;
    assert.ok(text.includes("\\[x\\]\\(http://a\\) \\<b\\>\\*"), text);
  });

  it("tells of a soft joint in the tile where it is, how wide and how long", () => {
    const soft = wallPlan(`${LAY}    movement joint over course 3\n`);
    assert.equal(
      hoverOn(soft, "movement joint over"),
      "**soft joint over course 3**\n\n1/16 in wide, 59 3/4 in long",
    );
    // Where there is no such joint, the word alone is told.
    const none = wallPlan(`${LAY}    movement joint over course 99\n`);
    assert.match(hoverOn(none, "movement joint over")!, /^A joint of the tile that is soft/);
  });
});
