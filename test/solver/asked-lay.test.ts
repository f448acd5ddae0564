import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { leftLay, standingLay } from "../../src/solver/asked-lay.js";
import { KnownLays } from "../../src/solver/known-lays.js";
import type { PanelText } from "./free-wall-text.js";
import { foundFor, lonePanel } from "./lone-panel.js";

const IN = NM_PER.inch;

function known(parts: PanelText) {
  const panel = lonePanel(parts);
  return { ...panel, known: new KnownLays(panel.plan, panel.all) };
}

describe("a lay as a round asks for it", () => {
  it("is left open as the plan leaves it", () => {
    const { known: all, lone } = known({ joint: "1/8 to 1/4" });
    const [lay] = leftLay(all, lone("dado")).lays;
    assert.equal(lay!.across, null);
    assert.deepEqual([lay!.joint.min, lay!.joint.max], [IN / 8, IN / 4]);
  });

  it("has the joint that another got with it", () => {
    const more = "lay field {\n bond stack\n joint 1/8 to 1/4\n over field\n courses 1\n }";
    const { known: all, lone, all: lays } = known({ over: "courses 1", more, joint: "1/8 to 1/4" });
    all.settle(lone("field"), foundFor(lone("field"), (3 * IN) / 16));
    const { joint } = leftLay(all, lays.at(-1)!).lays[0]!;
    assert.deepEqual([joint.min, joint.max], [(3 * IN) / 16, (3 * IN) / 16]);
  });

  it("begins with a full tile until the tiles that it goes on from are found, and then as they do", () => {
    const { known: all, lone, all: lays } = known({ over: "courses 1, 1 of dado, 1 of field" });
    const next = lays[3]!;
    const kind = () => leftLay(all, next).lays[0]!.across?.kind;
    assert.equal(kind(), "full-tile");
    all.settle(lone("field"), foundFor(lone("field"), IN / 8));
    assert.notEqual(kind(), "full-tile");
  });

  it("stands where it was measured if it is set", () => {
    const dado = "across full tile from left\n set courses 1 to 2 top 12 1/4";
    const { known: all, lone } = known({ dado });
    assert.deepEqual(leftLay(all, lone("dado")).lays[0]!.up, { kind: "joint", y: -IN / 16 });
  });

  it("leaves nothing open but a joint where it stands", () => {
    const niche = "niche n {\n at 8 to 12, 18 to 22\n size 8 x 8\n movement 1/8\n }";
    const { known: all, lone } = known({ openings: niche, height: "36 to 40" });
    const found = foundFor(lone("field"), IN / 8);
    all.settle(lone("field"), found);
    const wall = standingLay(all, lone("field"));
    assert.equal(wall.stop, null);
    assert.deepEqual(wall.openings[0]!.free, { x: null, y: null });
    assert.deepEqual(
      [wall.lays[0]!.across, wall.lays[0]!.up],
      [found.chosen.across, found.chosen.up],
    );
  });
});
