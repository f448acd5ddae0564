import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "opening/back-off-joint";

/** A niche from joint to joint of 6 x 3 tile with joints of 1/8 in: bed joints have their middles every 3 1/8 in. */
const niche = (statement: string, face = "2 x 2"): WallText => ({
  plan: `tile small {\n face ${face}\n thickness 5/16\n}`,
  size: "42 3/4 x 24 7/8",
  wall: `niche shelf {
 at 6 1/8, 3 1/8
 size 12 1/8 x 9 1/4
 movement 1/8
 depth 3
 ${statement}
}`,
});

describe("opening/back-off-joint", () => {
  it("is silent where the back goes on from the wall", () => {
    assert.deepEqual(messages(niche(""), CODE), []);
    assert.deepEqual(messages(niche("back field running 1/2"), CODE), []);
  });

  it("tells the most by which a joint of the wall has none behind it", () => {
    // Over the niche's foot the wall's joints are at 3 1/16 and 6 3/16; the back's, from its first whole course
    // at 1/8, at 2 3/16, 4 5/16 and 6 7/16: 7/8 and 1/4 off.
    const [found, ...others] = findings(niche("back small joint 1/8"), CODE);
    assert.deepEqual(others, []);
    assert.equal(found!.severity, "information");
    assert.equal(
      found!.message,
      "niche shelf, back: its bed joints are up to 7/8 in off the wall's; joints that go on are wanted: of tile " +
        "that comes with its joint to 3 1/8 in, or to a whole part of it",
    );
  });

  it("is silent about tile that goes a whole number of times into the wall's courses", () => {
    assert.deepEqual(messages(niche("back small joint 1/8", "3 x 1 7/16"), CODE), []);
    // A joint of another width too: 1 1/2 and 1/16.
    assert.deepEqual(messages(niche("back small joint 1/16", "3 x 1 1/2"), CODE), []);
  });

  it("tells what is off by one nanometre a course", () => {
    const [found] = messages(niche("back small joint 1/8", "3 x 1 7/16 + nm"), CODE);
    assert.match(found!, /up to \d+ in off|up to [\d/ ]+[+-] in off/);
  });

  it("speaks of no other surface, and can be allowed", () => {
    assert.deepEqual(messages(niche("sides small joint 1/8"), CODE), []);
    const allowed = niche('back small joint 1/8\n allow opening/back-off-joint "a mosaic"');
    assert.equal(findings(allowed, CODE)[0]!.allowed, "a mosaic");
  });
});
