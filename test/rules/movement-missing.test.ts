import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "movement/missing";
const left = (edge: string) => ({ edges: `left ${edge}\nright free\nbottom free\ntop free` });
const opening = (text: string) => ({
  size: "42 x 36",
  wall: `${text.replace("{", "{\n at 12, 8\n size 12 x 12\n")}\n}`,
});

describe("movement/missing", () => {
  it("tells an edge with no soft joint, and one with a hard joint", () => {
    assert.deepEqual(messages(left("pan"), CODE), [
      "there is no soft joint at the left (pan); a movement joint of at least 1/8 in is wanted",
    ]);
    assert.deepEqual(messages(left("ceiling joint 1/8"), CODE), [
      "there is only a hard joint at the left (ceiling); a movement joint of at least 1/8 in is wanted",
    ]);
    assert.equal(messages(left("wall movement 0"), CODE).length, 1);
  });

  it("is silent at a soft joint, at a free edge, and at an edge left to its default", () => {
    assert.deepEqual(messages(left("wall movement 1/8"), CODE), []);
    assert.deepEqual(messages(left("free"), CODE), []);
    assert.deepEqual(messages({ edges: "" }, CODE), []);
  });

  it("tells windows and doors without one, framed or not, and no niches", () => {
    assert.deepEqual(messages(opening("window sash {"), CODE), [
      "there is no soft joint at window sash; a movement joint of at least 1/8 in is wanted",
    ]);
    assert.deepEqual(messages(opening("door way { frame nose mitre"), CODE), [
      "there is no soft joint between door way and its frame; " +
        "a movement joint of at least 1/8 in is wanted",
    ]);
    assert.deepEqual(messages(opening("window sash { movement 1/16"), CODE), []);
    assert.deepEqual(messages(opening("niche shelf {"), CODE), []);
  });

  it("tells what stands before the wall, where the plane changes", () => {
    for (const kind of ["bench", "curb", "soffit"]) {
      assert.deepEqual(messages(opening(`${kind} it {`), CODE), [
        `there is no soft joint at ${kind} it; a movement joint of at least 1/8 in is wanted`,
      ]);
    }
  });

  it("is an error that only an allow silences", () => {
    assert.equal(findings(left("pan"), CODE)[0]!.severity, "error");
    const off = { ...left("pan"), plan: "rules {\n movement off\n}" };
    assert.equal(findings(off, CODE)[0]!.severity, "error");
    const wall = 'allow movement/missing "the pan has a lip of its own"';
    const [found] = findings({ ...left("pan"), wall }, CODE);
    assert.equal(found!.severity, "information");
    assert.equal(found!.allowed, "the pan has a lip of its own");
  });

  it("wants the width that the plan's own limit says", () => {
    const text = { ...left("pan"), plan: "rules {\n movement 1/4\n}" };
    assert.match(messages(text, CODE)[0]!, /at least 1\/4 in is wanted/);
  });
});
