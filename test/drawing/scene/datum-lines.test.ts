import assert from "node:assert/strict";
import { boxesOverlap, makeLabel } from "../../../src/drawing/labels.js";
import { centreLine, levelLine } from "../../../src/drawing/scene/datum-lines.js";
import type { Label, PictureBox, RuledLine } from "../../../src/drawing/scene.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

const { setting } = solvedWallOf(planOf(wallText()));
const { em } = setting;
const bare: PictureBox = { left: 0, top: -10 * em, right: 20 * em, bottom: 0 };

function word(text: string, x: number, y: number): Label {
  return makeLabel({ text, role: "number", x, y, size: em, anchor: "start" });
}

/** Whether any of these lines runs through a text. */
function isCrossed({ box }: Label, lines: readonly RuledLine[]): boolean {
  return lines.some(({ points: [left, top, right, bottom] }) =>
    boxesOverlap(box, { left: left! - 0.001, top: top! - 0.001, right: right!, bottom: bottom! }),
  );
}

const level = (beside: Label[], below: Label[] = []) =>
  levelLine(bare, { ...bare, right: 24 * em }, { beside, below }, setting);

describe("the lines that a setter measures from", () => {
  it("are the level line past all that is beside the wall, with its name at the end", () => {
    const { lines, label } = level([word("2 set", 20.5 * em, -3 * em)]);
    assert.equal(lines.length, 1);
    const [from, , to] = lines[0]!.points;
    assert.ok(from! < 0 && to! > 24 * em && label.box.left > to!);
  });

  it("break off where the number of a low course stands on the level line, and go on past it", () => {
    const number = word("1 set", 20.5 * em, -0.3 * em);
    const { lines } = level([number]);
    assert.deepEqual([lines.length, isCrossed(number, lines)], [2, false]);
    assert.ok(lines[1]!.points[0]! > number.box.right && lines[1]!.points[2]! > 24 * em);
  });

  it("run past words below the wall that reach as far as the level line's name", () => {
    const wide = word("another wall, soft joint 1/8", 18 * em, 0.5 * em);
    const { label } = level([], [wide]);
    assert.ok(label.box.left > wide.box.right);
  });

  const name = makeLabel({
    text: "centre line",
    role: "caption",
    x: 10 * em,
    y: -13 * em,
    size: em,
  });

  it("are the centre line from its name to below the wall", () => {
    const [line, ...more] = centreLine(name, bare, [word("a", 0, -11 * em)], setting);
    assert.deepEqual(line!.points, [name.x, name.box.bottom, name.x, 0.5 * em]);
    assert.deepEqual(more, []);
  });

  it("break off at the captions of a narrow wall", () => {
    const captions = [
      word("free edge along the whole top", 0, -11 * em),
      word("pan, soft joint 1/8", 0, em),
    ];
    const lines = centreLine(name, bare, captions, setting);
    assert.ok(lines.length > 0 && captions.every((caption) => !isCrossed(caption, lines)));
    // Through the wall it is whole.
    assert.ok(lines.some(({ points }) => points[1]! < bare.top && points[3]! > bare.bottom));
  });
});
