import assert from "node:assert/strict";
import { ownStart } from "../../src/service/own-start.js";
import { panelText } from "../solver/free-wall-text.js";
import { stateOf } from "./state-of.js";

/** Two courses of the dado's tile, then the field's, in one block. */
function listed(start: string): ReturnType<typeof ownStart> {
  const block = `lay dado {\n bond stack\n joint 1/8\n ${start}\n courses 2 of dado, rest of field\n }`;
  const text = panelText().replace(/ {2}lay [^]*$/, `${block}\n}\n`);
  const [wall] = stateOf(text).outcome.solved.walls;
  assert.equal(wall!.lays.length, 2);
  return ownStart(wall!, wall!.lays[0]!);
}

describe("a lay's own start, to be written down", () => {
  it("is what it has, where all tiles of its block have it", () => {
    const [wall] = stateOf(panelText()).outcome.solved.walls;
    const [dado] = wall!.lays;
    const { across, up, joint } = dado!;
    assert.deepEqual(ownStart(wall!, dado!), { across, up, joint });
    assert.equal(listed("across full tile from left").across!.kind, "full-tile");
  });

  it("stays open across where they came to start otherwise", () => {
    // Ends of 6 in tile on 40 in are in balance round a tile, those of 4 in tile round a joint.
    assert.equal(listed("").across, null);
  });
});
