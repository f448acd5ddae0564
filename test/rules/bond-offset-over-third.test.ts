import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "bond/offset-over-third";
const long = (face: string, bond: string) => ({ face, bond, size: "60 x 40" });

describe("bond/offset-over-third", () => {
  it("tells tile one nanometre over 15 in that is offset by more than a third", () => {
    assert.deepEqual(messages(long("15 + nm x 8", "running 1/2"), CODE), [
      "the bond offsets tile 15+ in long by 1/2; over 15 in, at most 1/3 is wanted",
    ]);
    assert.deepEqual(messages(long("15 x 8", "running 1/2"), CODE), []);
  });

  it("is silent at a third, from either side", () => {
    assert.deepEqual(messages(long("24 x 8", "running 1/3"), CODE), []);
    assert.deepEqual(messages(long("24 x 8", "running 2/3"), CODE), []);
    assert.equal(messages(long("24 x 8", "running 34/100"), CODE).length, 1);
    assert.equal(messages(long("24 x 8", "running 33/100"), CODE).length, 0);
  });

  it("counts the side along the courses, and only in a running bond", () => {
    assert.deepEqual(messages(long("8 x 24", "running 1/2"), CODE), []);
    assert.deepEqual(messages(long("24 x 8", "stack"), CODE), []);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const half = long("24 x 8", "running 1/2");
    assert.equal(messages({ ...half, plan: "rules {\n offset 1/2\n}" }, CODE).length, 0);
    assert.equal(messages({ ...half, plan: "rules {\n offset 49/100\n}" }, CODE).length, 1);
    assert.equal(messages({ ...half, plan: "rules {\n offset off\n}" }, CODE).length, 0);
  });

  it("is an error, silenced by an allow in the tile", () => {
    assert.equal(findings(long("24 x 8", "running 1/2"), CODE)[0]!.severity, "error");
    const tile = 'allow bond/offset-over-third "mock-up approved"';
    const [found] = findings({ ...long("24 x 8", "running 1/2"), tile }, CODE);
    assert.equal(found!.allowed, "mock-up approved");
  });
});
