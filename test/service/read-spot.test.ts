import assert from "node:assert/strict";
import type { SpotReading } from "../../src/service/index.js";
import { exampleText } from "../support/examples.js";
import { Plans } from "./plans.js";

/** What stands at a spot, in millimetres from the left and up. */
function spotOf(example: string, wall: string, x: number, up: number): SpotReading | null {
  const plans = new Plans();
  const document = plans.open(exampleText(example));
  const { uri, version } = document;
  return plans.service.spot(document, { uri, version, wall, x, y: -up }, "plan");
}

function factsOf(reading: SpotReading | null): Record<string, string> {
  return Object.fromEntries(reading?.facts ?? []);
}

describe("what stands at a spot", () => {
  it("is a piece with its course, its size, its cut and its outline, and the lay that made it", () => {
    const reading = spotOf("niche-wall.tileplan", "north", 1200, 150)!;
    assert.deepEqual([reading.title, reading.piece], ["Course 1, piece 3", "north/1/3"]);
    assert.deepEqual(factsOf(reading), {
      size: "598 mm x 298 mm",
      cut: "whole tile",
      across: "906 mm to 1504 mm",
      up: "4 mm to 302 mm",
      tile: "300 x 600 wall tile, chalk",
    });
    assert.deepEqual(reading.outline, [906, -4, 1504, -4, 1504, -302, 906, -302]);
    assert.equal(reading.place.range.start.line, 28);
  });

  it("is an opening, a hole, a joint, a soft joint", () => {
    assert.equal(spotOf("niche-wall.tileplan", "north", 1200, 1300)!.title, "Niche shelf");
    assert.equal(spotOf("niche-wall.tileplan", "north", 1205, 1060)!.title, "Hole spout");
    assert.equal(spotOf("niche-wall.tileplan", "north", 1505, 150)!.title, "Joint");
    assert.equal(spotOf("niche-wall.tileplan", "north", 2, 150)!.title, "Soft joint at the left");
    assert.equal(
      spotOf("niche-wall.tileplan", "north", 905, 1300)!.title,
      "Soft joint at niche shelf",
    );
  });

  it("is a length of trim, mitred", () => {
    const inch = 25.4;
    const reading = spotOf("back-wall.tileplan", "back", 28 * inch, 43.5 * inch)!;
    assert.match(reading.title, /^Trim at the bottom of window sash, piece \d of \d$/);
    assert.ok(factsOf(reading).length);
    // The joint between two lengths of trim is the laid one.
    assert.equal(spotOf("back-wall.tileplan", "back", 29.5 * inch, 43.5 * inch)!.title, "Joint");
  });

  it("tells what another wall's tile covers", () => {
    const reading = spotOf("three-walls.tileplan", "back", 10, 500);
    assert.match(factsOf(reading).seen ?? "", /the tile of left and plumbing covers/);
  });

  it("is nothing off the wall, on an unknown wall, or in another version", () => {
    assert.equal(spotOf("niche-wall.tileplan", "north", -50, 150), null);
    assert.equal(spotOf("niche-wall.tileplan", "south", 50, 150), null);
    const plans = new Plans();
    const document = plans.open(exampleText("niche-wall.tileplan"));
    const question = { uri: document.uri, version: 99, wall: "north", x: 1, y: -1 };
    assert.equal(plans.service.spot(document, question, "plan"), null);
  });

  it("is a hole as far as it reaches, and the tile round it", () => {
    const titleAt = (x: number) => spotOf("niche-wall.tileplan", "north", x, 1060)?.title;
    assert.equal(titleAt(1205 + 29), "Hole spout");
    assert.equal(titleAt(1205 - 29), "Hole spout");
    assert.match(titleAt(1205 + 31) ?? "", /^Course 4, piece 3$/);
  });

  it("tells what covers a hole", () => {
    const plans = new Plans();
    const document = plans.open(
      exampleText("niche-wall.tileplan").replace(/(hole spout .*)/, "$1 plate 90 x 70"),
    );
    const { uri, version } = document;
    const question = { uri, version, wall: "north", x: 1205, y: -1060 };
    const facts = factsOf(plans.service.spot(document, question, "plan"));
    assert.equal(facts.plate, "90 mm x 70 mm");
  });
});
