import assert from "node:assert/strict";
import { cutWeight } from "../../../src/solver/choose/cell.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { partsOf } from "../../../src/solver/choose/parts.js";
import { classify } from "../../../src/solver/classify.js";
import { cutTile } from "../../../src/solver/cut-tile.js";
import type { Box } from "../../../src/solver/index.js";
import { randomFrom } from "../../support/random.js";
import { oneWall, randomGiven, type Variety } from "./model-plan.js";

function told(parts: readonly { readonly bounds: Box; readonly cut: number }[]): string[] {
  return parts
    .map(({ bounds: { left, bottom, right, top }, cut }) =>
      [left, bottom, right, top, cutWeight(cut)].join(" "),
    )
    .sort();
}

function areAsCut(variety: Variety): void {
  for (let seed = 1; seed <= 200; seed++) {
    const random = randomFrom(seed);
    const one = oneWall(randomGiven(random, variety));
    const field = fieldOf(one.plan, one.wall, one.lay, one.lay.joint.min);
    for (let n = 0; n < 20; n++) {
      const left = random.integer(-field.across.face, one.wall.size.across);
      const bottom = random.integer(-field.up.face, one.wall.size.up);
      const right = left + field.across.face;
      const box = { left, bottom, right, top: bottom + field.up.face };
      const { region, boxes, circles } = field;
      const cut = cutTile(box, region, { boxes, circles }).map((part) => ({
        bounds: part.bounds,
        cut: classify(part, box),
      }));
      assert.deepEqual(told(partsOf(field, box, "exact", { cells: 0 })), told(cut), `seed ${seed}`);
    }
  }
}

describe("the parts of a box", () => {
  const variety = { measured: true, openings: 2, holes: true, corners: true, most: 6 };

  it("are those that cutting makes, without a shape where none is needed", () => {
    areAsCut(variety);
  });

  it("are those that cutting makes along the slopes of an outline", () => {
    areAsCut({ ...variety, outlined: true });
  });
});
