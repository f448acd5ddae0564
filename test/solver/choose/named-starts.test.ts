import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { namedAcross, namedUp, sayAcross, sayUp } from "../../../src/solver/choose/named-starts.js";
import { acrossOrigin, upOrigin } from "../../../src/solver/start.js";
import { inches, oneWall, window } from "./model-plan.js";

const sash = window([inches(18), inches(46)], [inches(24), inches(36)]);

describe("saying a start", () => {
  it("names what a plan can name without a figure, the wall first", () => {
    const { wall } = oneWall({ face: [60, 60], size: [600, 600], openings: [sash] });
    assert.equal(namedAcross(wall).length, 6);
    assert.deepEqual(namedAcross(wall)[0], { kind: "tile", centre: { on: "wall" } });
    assert.deepEqual(namedAcross(wall)[2], {
      kind: "tile",
      centre: { on: "opening", opening: sash },
    });
    assert.equal(namedUp(wall).length, 4);
  });

  it("gives back the lattice to the nanometre, for odd and even faces on either side of zero", () => {
    for (const face of [101, 102]) {
      const { plan, wall, lay } = oneWall({ face: [face, face], size: [40, 40], joint: [7, 7] });
      const field = fieldOf(plan, wall, lay, 7);
      for (let at = -120; at <= 120; at++) {
        const x = acrossOrigin(field.ground, sayAcross(field, at).start);
        const y = upOrigin(field.ground, sayUp(field, at).start);
        assert.equal(Math.abs(x - at) % (face + 7), 0, `face ${face}, x ${at}`);
        assert.equal(Math.abs(y - at) % (face + 7), 0, `face ${face}, y ${at}`);
      }
    }
  });
});
