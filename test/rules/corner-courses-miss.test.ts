import assert from "node:assert/strict";
import { cornerText, type CornerText } from "./corner-text.js";
import { findings } from "./wall-text.js";

const CODE = "corner/courses-miss";
const UP = "joint at 10";

const told = (parts: CornerText): string[] =>
  findings(cornerText({ up: UP, ...parts }), CODE).map(
    ({ severity, message }) => `${severity}: ${message}`,
  );

// BS 5385-1:2018 cl. 7.1.5, quoted in tilersforums.com/threads/tiling-standards.40411: courses of
// adjoining areas align.
describe("corner/courses-miss", () => {
  it("tells by how much courses miss, from one nanometre on, and is silent where they meet", () => {
    assert.deepEqual(told({ side: { up: "joint at 10 1/4" } }), [
      "warning: at the left corner the courses are 1/4 in above those of back; courses that meet are wanted",
    ]);
    assert.deepEqual(told({ side: { up: "joint at 10 - nm" } }), [
      "warning: at the left corner the courses are 0+ in below those of back; courses that meet are wanted",
    ]);
    assert.deepEqual(told({}), []);
    assert.deepEqual(told({ side: { up: "joint at 10 + 4 * 3 1/16" } }), []);
  });

  it("mentions courses that no start brings together", () => {
    assert.deepEqual(told({ side: { tile: "odd" } }), [
      "information: at the left corner courses of 4 1/16 in can't meet those of back, which are 3 1/16 in; " +
        "one module, or a whole multiple of it, is wanted",
    ]);
    assert.deepEqual(told({ side: { tile: "tall" } }), []);
  });

  it("speaks at the covering wall's corner, which is set last", () => {
    const text = cornerText({ up: UP, side: { up: "joint at 10 1/4" } });
    const [found] = findings(text, CODE);
    assert.equal(found!.wall, "side");
    assert.match(text.split("\n")[found!.range.start.line]!, /left corner back over/);
    assert.match(found!.source!, /BS 5385-1:2018/);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const off = { side: { up: "joint at 10 1/16" } };
    assert.deepEqual(told({ ...off, plan: "rules {\n courses 1/16\n}" }), []);
    assert.match(
      told({ ...off, plan: "rules {\n courses 1/16 - nm\n}" })[0]!,
      /at most 1\/16- in is wanted/,
    );
    assert.deepEqual(told({ ...off, plan: "rules {\n courses off\n}" }), []);
  });

  it("is silenced by an allow in either wall", () => {
    const allow = 'allow corner/courses-miss "a tall cupboard stands there"';
    const side = { up: "joint at 10 1/4" };
    const own = findings(cornerText({ up: UP, side: { ...side, wall: allow } }), CODE);
    const other = findings(
      cornerText({ up: UP, side }).replace("size 60 x 48", `size 60 x 48\n${allow}`),
      CODE,
    );
    assert.ok(own[0]!.allowed && other[0]!.allowed);
  });
});
