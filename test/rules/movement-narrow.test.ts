import assert from "node:assert/strict";
import { findings } from "./wall-text.js";

const CODE = "movement/narrow";
const left = (edge: string) => ({ edges: `left ${edge}\nright free\nbottom free\ntop free` });
const window = (movement: string, allow = "") => ({
  size: "42 x 36",
  wall: `window sash {\n at 12, 8\n size 12 x 12\n movement ${movement}\n ${allow}\n}`,
});
const told = (parts: Parameters<typeof findings>[0]) =>
  findings(parts, CODE).map(({ severity, message }) => `${severity}: ${message}`);

describe("movement/narrow", () => {
  it("warns of a soft joint one nanometre under 1/8 in, and is silent at it", () => {
    assert.deepEqual(told(left("wall movement 1/8 - nm")), [
      "warning: the soft joint at the left (wall) is 1/8- in; at least 1/8 in is wanted",
    ]);
    assert.deepEqual(told(left("wall movement 1/8")), []);
  });

  it("only mentions 1/16 in beside a pan, a tub, a window or a door", () => {
    const usual = "at least 1/8 in is wanted, though 1/16 in is common practice here";
    assert.deepEqual(told(left("pan movement 1/16")), [
      `information: the soft joint at the left (pan) is 1/16 in; ${usual}`,
    ]);
    assert.deepEqual(told(window("1/16")), [
      `information: the soft joint at window sash is 1/16 in; ${usual}`,
    ]);
    assert.match(told(left("tub movement 1/16 - nm"))[0]!, /^warning: .* is 1\/16- in/);
    assert.match(told(window("1/16 - nm"))[0]!, /^warning/);
    assert.match(told(left("wall movement 1/16"))[0]!, /^warning/);
  });

  it("holds a limit of the plan's own everywhere", () => {
    const wide = { plan: "rules {\n movement 1/4\n}" };
    assert.match(
      told({ ...left("pan movement 1/4 - nm"), ...wide })[0]!,
      /^warning: .*at least 1\/4 in/,
    );
    assert.deepEqual(told({ ...left("pan movement 1/4"), ...wide }), []);
    assert.deepEqual(told({ ...left("pan movement 1/32"), plan: "rules {\n movement off\n}" }), []);
  });

  it("is silenced by an allow in the window", () => {
    const allow = 'allow movement/narrow "the flange leaves no more room"';
    const [found] = findings(window("1/32", allow), CODE);
    assert.equal(found!.severity, "information");
    assert.equal(found!.allowed, "the flange leaves no more room");
  });

  it("warns of one in the tile, which is as wide as the joint that it fills", () => {
    const soft = (joint: string) => ({ lay: "movement joint over course 2", joint });
    assert.deepEqual(told(soft("1/8 - nm")), [
      "warning: the soft joint over course 2 is 1/8- in; a joint of at least 1/8 in, as between two lays, is wanted",
    ]);
    assert.deepEqual(told(soft("1/8")), []);
  });

  it("warns of one between lays", () => {
    const between = (width: string) => ({
      lay: `covers bottom to 6\nbetween movement ${width}`,
      wall: "lay field {\n bond stack\n joint 1/8\n}",
    });
    assert.match(
      told(between("1/16"))[0]!,
      /^warning: .* is 1\/16 in; at least 1\/8 in is wanted$/,
    );
    assert.deepEqual(told(between("1/8")), []);
    assert.deepEqual(told({ ...between("1/8"), lay: "covers bottom to 6\nbetween 1/16" }), []);
  });

  it("can be mended as long as there is no grout, also between courses that are set", () => {
    const lay = "set courses 1 to 3\nmovement joint over course 2";
    assert.deepEqual(told({ lay, joint: "1/16" }).length, 1);
    assert.match(told({ lay, joint: "1/16" })[0]!, /^warning: [^;]*; [^;]*$/);
  });
});
