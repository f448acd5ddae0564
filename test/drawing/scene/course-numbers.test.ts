import assert from "node:assert/strict";
import { courseNumbers, softLabels } from "../../../src/drawing/scene/course-numbers.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

const bare = { left: 0, top: -762, right: 1016, bottom: 0 };
const START =
  "    bond stack\n    joint 1/8\n    across full tile from left\n    up full course from bottom";

function numbersOf(lay = START) {
  const { solved, setting } = solvedWallOf(planOf(wallText("", "back", lay)));
  const numbers = courseNumbers(solved, bare, setting);
  return { numbers, soft: softLabels(solved, bare, numbers, setting) };
}

describe("the numbers of the courses", () => {
  it("stand beside the wall from 1 up", () => {
    const { numbers, soft } = numbersOf();
    assert.deepEqual(
      numbers.map(({ text }) => text),
      numbers.map((_, i) => String(i + 1)),
    );
    assert.ok(
      numbers.every(
        ({ box }, i) => box.left > 1016 && (i === 0 || box.bottom <= numbers[i - 1]!.box.top),
      ),
    );
    assert.deepEqual(soft, []);
  });

  it("say which courses are set", () => {
    const { numbers } = numbersOf(`${START}\n    set courses 1 to 2`);
    assert.deepEqual(
      numbers.slice(0, 3).map(({ text }) => text),
      ["1 set", "2 set", "3"],
    );
  });

  it("have the soft joints beside them, clear of them", () => {
    const { numbers, soft } = numbersOf(`${START}\n    movement joint over course 2`);
    const right = Math.max(...numbers.map(({ box }) => box.right));
    assert.deepEqual(
      soft.map(({ text, box }) => [text, box.left > right]),
      [["soft", true]],
    );
  });
});
