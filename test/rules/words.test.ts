import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import type { Edge, Opening } from "../../src/model/index.js";
import {
  edgeMeets,
  length,
  lengthOff,
  openingName,
  pieceCount,
  ratio,
  sizesOff,
  verb,
} from "../../src/rules/words.js";
import { solveText } from "../support/solve-text.js";

const IN = NM_PER.inch;
const inch = solveText('plan "Test"\nunits inch\n').solved;
const metric = solveText('plan "Test"\nunits mm\n').solved;

describe("the rules' words", () => {
  it("give lengths in the plan's units", () => {
    assert.equal(length(inch, 2.5 * IN), "2 1/2 in");
    assert.equal(length(metric, 2.5 * IN), "63.5 mm");
  });

  it("tell a length from a limit that reads alike", () => {
    assert.equal(lengthOff(metric, 50_800_000, 50_800_000), "50.8 mm");
    assert.equal(lengthOff(metric, 50_799_999, 50_800_000), "just under 50.8 mm");
    assert.equal(lengthOff(metric, 50_800_001, 50_800_000), "just over 50.8 mm");
    assert.equal(lengthOff(inch, 2 * IN - 1, 2 * IN), "2- in");
  });

  it("give one size, or the least and the most", () => {
    assert.equal(sizesOff(inch, IN, IN, 2 * IN), "1 in");
    assert.equal(sizesOff(inch, IN, 1.5 * IN, 2 * IN), "1 in to 1 1/2 in");
  });

  it("count, and name what they speak of", () => {
    assert.equal(`${pieceCount(1)} ${verb(1, "is", "are")}`, "1 piece is");
    assert.equal(`${pieceCount(8)} ${verb(8, "is", "are")}`, "8 pieces are");
    assert.equal(openingName({ kind: "window", name: "sash" } as Opening), "window sash");
    assert.equal(edgeMeets({ meets: { kind: "pan" } } as Edge), "pan");
    const corner = { kind: "corner", wall: "left", lap: "under" } as const;
    assert.equal(edgeMeets({ meets: corner } as Edge), "corner with left");
    assert.equal(ratio({ p: 1, q: 3 }), "1/3");
  });
});
