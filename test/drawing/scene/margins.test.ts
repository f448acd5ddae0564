import assert from "node:assert/strict";
import type { Margins } from "../../../src/drawing/scene/margins.js";
import { wallMargins } from "../../../src/drawing/scene/margins.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

const bare = { left: 0, top: -762, right: 1016, bottom: 0 };

function marginsOf(inside = "", told: string[] = []): Margins {
  const { solved, setting } = solvedWallOf(planOf(wallText(inside)));
  return wallMargins(solved, bare, told, setting);
}

const textsOf = ({ labels }: Margins) => labels.map(({ text }) => text);

describe("what stands round a wall", () => {
  it("names each edge and its joint", () => {
    const texts = textsOf(
      marginsOf("  bottom tub movement 1/4\n  left wall joint 1/8\n  right free trim nose"),
    );
    assert.ok(texts.includes("tub, soft joint 1/4"));
    assert.ok(texts.includes("another wall, grout joint 1/8"));
    assert.ok(texts.includes("free edge, trim nose"));
  });

  it("has the level line at the level, past the wall at both ends, and the centre line", () => {
    const margins = marginsOf();
    const level = margins.lines.find(({ kind }) => kind === "level")!;
    assert.deepEqual([level.points[1], level.points[3]], [0, 0]);
    assert.ok(level.points[0]! < 0 && level.points[2]! > 1016);
    const centre = margins.lines.find(({ kind }) => kind === "centre")!;
    assert.deepEqual([centre.points[0], centre.points[2]], [508, 508]);
    assert.ok(textsOf(margins).includes("level line"));
    assert.ok(textsOf(margins).includes("centre line"));
  });

  it("runs the level line past the words under a wall that is narrower than they are", () => {
    const { solved, setting } = solvedWallOf(planOf(wallText()));
    const narrow = { ...bare, right: 20, top: -20 };
    const { labels } = wallMargins(solved, narrow, [], setting);
    const [bottom] = labels.filter(({ box }) => box.left === 0 && box.top > 0);
    const level = labels.find(({ text }) => text === "level line")!;
    assert.ok(bottom!.box.right > 100 && bottom!.box.top < level.box.bottom);
    assert.ok(level.box.left > bottom!.box.right);
  });

  it("numbers the courses from 1 up at the right", () => {
    const numbers = marginsOf().labels.filter(({ role }) => role === "number");
    assert.deepEqual(
      numbers.map(({ text }) => text),
      Array.from({ length: numbers.length }, (_, i) => String(i + 1)),
    );
    assert.ok(numbers.every(({ box }) => box.left >= 1016));
    assert.equal(numbers.length, 10);
  });

  it("tells what found no room elsewhere below everything", () => {
    const margins = marginsOf("", ["window w, 1 × 1"]);
    const label = margins.labels.find(({ text }) => text === "window w, 1 × 1")!;
    const others = margins.labels.filter((each) => each !== label);
    assert.ok(others.every(({ box }) => box.bottom <= label.box.top));
  });

  it("says beside the courses which joint is soft", () => {
    const { solved, setting } = solvedWallOf(
      planOf(
        wallText(
          "",
          "back",
          "    bond stack\n    joint 1/8\n    across full tile from left\n    up full course from bottom\n    movement joint over course 2",
        ),
      ),
    );
    const numbers = wallMargins(solved, bare, [], setting).labels.filter(
      ({ role }) => role === "number",
    );
    const at = (text: string) => numbers.find((label) => label.text === text)!.y;
    assert.ok(at("soft") < at("2") && at("soft") > at("3"));
  });
});
