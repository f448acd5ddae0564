import assert from "node:assert/strict";
import { bandText, type BandText, LAYS } from "./band-text.js";
import { findings, messages } from "./wall-text.js";

const CODE = "band/height";

/** The side wall's courses begin `by` higher, so that its lowest one is cut. */
const higher = (by: string): BandText => ({
  sideLays: LAYS.replace("courses", `up joint at ${by} - 1/16\n    courses`),
});
const told = (parts: BandText): string[] => messages(bandText(parts), CODE);

// BS 5385-1:2018 cl. 7.1.5, quoted in tilersforums.com/threads/tiling-standards.40411: courses of
// adjoining areas align.
describe("band/height", () => {
  it("tells by how much a band is off the next wall's, and is silent where they meet", () => {
    assert.deepEqual(told({}), []);
    assert.deepEqual(told(higher("0")), []);
    // With the joint's middle at -1/4 - 1/16 in, course 1 begins at -1/4 in and is cut.
    assert.deepEqual(told(higher("-1/4")), [
      "at the left corner band liner stands 1/4 in below that of back: it runs from 24 3/4 in to 25 3/4 in up, " +
        "the other from 25 in to 26 in; bands that meet are wanted",
    ]);
    assert.match(told(higher("-nm"))[0]!, /stands 0\+ in below that of back/);
  });

  it("tells of bottoms and tops apart where the bands are not of one height", () => {
    const [found] = told({ sideLays: LAYS.replace("1 of liner", "2 of liner") });
    assert.match(found!, /the bottom of band liner is level with, its top 1 1\/8 in above that of/);
  });

  it("speaks at the covering wall's corner, as a warning with its source", () => {
    const text = bandText(higher("-1/4"));
    const [found] = findings(text, CODE);
    assert.deepEqual([found!.wall, found!.severity], ["side", "warning"]);
    assert.match(text.split("\n")[found!.range.start.line]!, /left corner back over/);
    assert.match(found!.source!, /BS 5385-1:2018/);
  });

  it("says nothing of a band whose tile the next wall doesn't have", () => {
    assert.deepEqual(told({ sideLays: LAYS.replace("1 of liner", "1 of pencil") }), []);
    assert.deepEqual(told({ sideLays: LAYS.replace(", 1 of liner", "") }), []);
  });

  it("speaks in place of corner/courses-miss, which is about the field", () => {
    const other = messages(bandText(higher("-1/4")), "corner/courses-miss");
    assert.equal(other.length, 2, "the courses under the band and over it");
    assert.deepEqual(messages(bandText(), "corner/courses-miss"), []);
  });

  it("follows the plan's own limit, and is silenced by off and by an allow in either wall", () => {
    const limit = (text: string) => ({ ...higher("-1/4"), plan: `rules {\n band ${text}\n}` });
    assert.deepEqual(told(limit("1/4")), []);
    assert.match(told(limit("1/4 - nm"))[0]!, /at most 1\/4- in is wanted/);
    assert.deepEqual(told(limit("off")), []);
    const allow = `allow ${CODE} "the vanity's splash is lower"`;
    for (const parts of [{ back: allow }, { side: allow }]) {
      assert.ok(findings(bandText({ ...higher("-1/4"), ...parts }), CODE)[0]!.allowed);
    }
  });
});
