import assert from "node:assert/strict";
import { mitredText } from "../../rooms/mitred-text.js";
import { cutWall } from "../../support/cut-wall.js";
import { takeText } from "../../support/takeoff-text.js";

const SAW = { plan: ["saw { rip 80 }"] };

function words(parts: Parameters<typeof cutWall>[0], label: string, stock = SAW) {
  const { taken } = cutWall(parts, stock);
  return taken.walls[0]!.batches.find(({ labels }) => labels.includes(label))!.beyondSaw;
}

describe("what the saw can't do of a cut", () => {
  it("is a rip that is longer than the saw's longest cut", () => {
    assert.deepEqual(words({ size: "202 x 30" }, "B-01-01"), [
      "the cut is 100 mm long, the saw cuts 80 mm at most",
    ]);
  });

  it("is nothing when the longest cut is just as long", () => {
    assert.deepEqual(words({ size: "202 x 30" }, "B-01-01", { plan: ["saw { rip 100 }"] }), []);
    assert.deepEqual(words({ size: "154 x 50" }, "B-01-02"), []);
  });

  it("is a notch's inside corner, and an opening inside the tile", () => {
    const window = (place: string) => ({
      size: "202 x 50",
      wall: [`window sash {\n${place}\nmovement 0\n}`],
    });
    assert.match(words(window("at 60, 30\nsize 60 x 20"), "B-01-01").join(), /inside corners/);
    assert.match(words(window("at 20, 10\nsize 20 x 20"), "B-01-01").join(), /begin inside/);
  });

  it("is a round hole", () => {
    const parts = { size: "202 x 50", wall: ["hole arm at 50, 25 across 20"] };
    assert.deepEqual(words(parts, "B-01-01"), ["a round hole is drilled, not sawn"]);
  });

  it("is a mitre that is longer than the saw's longest cut", () => {
    // 3 in of mitre, of a piece that is not cut otherwise.
    const told = (most: string) =>
      takeText(mitredText().replace("units inch", `units inch\nsaw { rip ${most} }`))
        .taken.walls[0]!.batches.at(-1)!
        .beyondSaw.join();
    assert.equal(told("2 1/2"), "the cut is 3 in long, the saw cuts 2 1/2 in at most");
    assert.equal(told("3"), "");
  });

  it("isn't told of a saw that the plan doesn't name", () => {
    assert.deepEqual(words({ size: "202 x 30" }, "B-01-01", { plan: [] }), []);
  });
});
