import assert from "node:assert/strict";
import { findings, messages, WALLS } from "./wall-text.js";

const CODE = "balance/unequal-ends";
const centred = (x: string, bond = "stack") => ({
  bond,
  size: "36 x 12 3/8",
  edges: WALLS,
  start: `across tile centred at ${x}\nup full course from bottom`,
});

describe("balance/unequal-ends", () => {
  it("is silent where the ends differ by 1/8 in, and tells one nanometre more", () => {
    assert.deepEqual(messages(centred("18"), CODE), []);
    assert.deepEqual(messages(centred("18 + 1/16"), CODE), []);
    const uneven = { ...centred("18 + 1/16"), size: "36 - nm x 12 3/8" };
    assert.match(messages(uneven, CODE).join(), /1\/8\+ in apart; at most 1\/8 in is wanted$/);
  });

  it("says what each end shows", () => {
    assert.deepEqual(messages(centred("19"), CODE), [
      "the left end shows 3 1/2 in and the right end 1 1/2 in: 2 in apart; at most 1/8 in is wanted",
    ]);
    const [found] = findings(centred("19"), CODE);
    assert.equal(found!.severity, "warning");
    assert.equal(found!.pieces!.length, 8);
  });

  it("is silent about ends that the bond swaps from course to course", () => {
    const quarter = "18 + 1 17/32";
    assert.deepEqual(messages(centred("18", "running 1/2"), CODE), []);
    assert.deepEqual(messages(centred(quarter, "running 1/2"), CODE), []);
    assert.equal(messages(centred(quarter, "stack"), CODE).length, 1);
    assert.equal(messages(centred("18 3/4", "running 1/2"), CODE).length, 1);
  });

  it("only mentions what a full tile from one side leaves", () => {
    const [found] = findings({ size: "34 x 12 3/8", edges: WALLS }, CODE);
    assert.equal(found!.severity, "information");
  });

  it("takes a whole tile at a free edge for no cut", () => {
    const free = "left free\nright wall movement 1/8\nbottom free\ntop free";
    assert.deepEqual(messages({ size: "34 x 12 3/8", edges: free }, CODE), []);
  });

  it("compares ends by their mean where a side is out of plumb", () => {
    const leaning = (off: string) => ({
      ...centred("18"),
      edges: `left wall measured 0: -${off}, 12 3/8: ${off} movement 1/8\nright wall movement 1/8\nbottom free\ntop free`,
    });
    assert.deepEqual(messages(leaning("1/4"), CODE), []);
  });

  it("leaves out courses that end at a door", () => {
    const door = {
      ...centred("19"),
      wall: "door way {\n at 0, 0\n size 5 x 12 3/8\n movement 1/8\n}",
    };
    assert.deepEqual(messages(door, CODE), []);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    assert.equal(messages({ ...centred("19"), plan: "rules {\n ends 2\n}" }, CODE).length, 0);
    assert.equal(messages({ ...centred("19"), plan: "rules {\n ends 2 - nm\n}" }, CODE).length, 1);
    assert.equal(messages({ ...centred("19"), plan: "rules {\n ends off\n}" }, CODE).length, 0);
  });

  it("is silenced by an allow in the wall", () => {
    const wall = 'allow balance/unequal-ends "a cupboard hides the right end"';
    const [found] = findings({ ...centred("19"), wall }, CODE);
    assert.equal(found!.allowed, "a cupboard hides the right end");
  });
});
