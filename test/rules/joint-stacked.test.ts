import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "joint/stacked";
/**
 * Courses 1 and 2 are whole; the window's soft joint begins on course 2's top. The joint along its
 * left side has its middle 1/16 in left of `x`; under it head joints stand at 9 1/8 and 15 1/4 in.
 * A quarter of the module of 6 1/8 in is 1 17/32 in.
 */
const window = (x: string, more = "") => ({
  bond: "running 1/2",
  size: "42 3/4 x 24 7/8",
  wall: `window sash {\n at ${x}, 6 1/4\n size 7 1/2 x 5\n movement 1/8\n ${more}\n}`,
});
const clear = "9 1/8 + 1 17/32 + 1/16";

describe("joint/stacked", () => {
  it("tells a bond that sets adjacent courses less than a quarter of a module apart", () => {
    const text = { bond: "running 1/5", size: "24 3/8 x 12 3/8" };
    assert.deepEqual(messages(text, CODE), [
      "the bond sets the head joints of adjacent courses 1 7/32+ in apart, 1/5 of a module; " +
        "at least 1/4 is wanted",
    ]);
    assert.equal(findings(text, CODE)[0]!.severity, "warning");
    assert.deepEqual(messages({ ...text, bond: "running 1/4" }, CODE), []);
    assert.deepEqual(messages({ ...text, bond: "running 3/4" }, CODE), []);
    assert.equal(messages({ ...text, bond: "running 4/5" }, CODE).length, 1);
  });

  it("is silent in a stack bond, and where only one course is laid", () => {
    assert.deepEqual(messages({ bond: "stack" }, CODE), []);
    assert.deepEqual(messages({ bond: "running 1/5", size: "24 3/8 x 3" }, CODE), []);
  });

  it("mentions a head joint under an opening, one nanometre too near the line of its side", () => {
    const [found, ...rest] = findings(window(`${clear} - nm`), CODE);
    assert.deepEqual(rest, []);
    assert.equal(found!.severity, "information");
    assert.equal(
      found!.message,
      "a head joint under window sash is 1 17/32- in off the line of the joint along its side; " +
        "at least 1 17/32 in, 1/4 of a module, is wanted",
    );
    assert.deepEqual(found!.pieces, ["back/2/2", "back/2/3"]);
  });

  it("is silent at a quarter of a module", () => {
    assert.deepEqual(messages(window(clear), CODE), []);
  });

  it("tells a head joint over an opening alike", () => {
    // The soft joint ends on course 2's bottom; it begins within course 1, and notches it.
    const head = {
      ...window(""),
      wall: "window sash {\n at 9, 1\n size 7 1/2 x 2\n movement 1/8\n}",
    };
    assert.match(messages(head, CODE).join(), /^a head joint over window sash is/);
  });

  it("is silent where the sill cuts into a course", () => {
    const low = {
      ...window(""),
      wall: "window sash {\n at 9, 7\n size 7 1/2 x 5\n movement 1/8\n}",
    };
    assert.deepEqual(messages(low, CODE), []);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const near = window("10 1/2");
    assert.equal(messages(near, CODE).length, 1);
    assert.equal(messages({ ...near, plan: "rules {\n stacked 1/5\n}" }, CODE).length, 0);
    assert.equal(messages({ ...near, plan: "rules {\n stacked off\n}" }, CODE).length, 0);
    assert.equal(
      messages({ bond: "running 1/4", plan: "rules {\n stacked 1/3\n}" }, CODE).length,
      1,
    );
  });

  it("is silenced by an allow in the opening", () => {
    const allow = 'allow joint/stacked "centred on the valve"';
    assert.equal(findings(window("10 1/2", allow), CODE)[0]!.allowed, "centred on the valve");
  });
});
