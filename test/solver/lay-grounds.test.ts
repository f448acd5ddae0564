import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { LayGrounds } from "../../src/solver/lay-grounds.js";
import { loneLays } from "../../src/solver/lone-lays.js";
import { planOf } from "../language/telling.js";
import { type PanelText, panelText } from "./free-wall-text.js";

const IN = NM_PER.inch;

function grounds(parts: PanelText) {
  const plan = planOf(panelText(parts));
  const { lays } = loneLays(plan, plan.walls[0]!);
  const all = new LayGrounds(plan, lays);
  return { lays, all };
}

/** A dado of a range and a field of a joint of its own, or of the same range. */
const RANGE = "joint 1/8 to 1/4";

describe("where the lays of a wall have their places", () => {
  it("is past those before them, by their joints", () => {
    const { lays, all } = grounds({});
    const [, field] = lays;
    // Two courses of 6 in with joints of 1/8 in end at 12 1/8 in.
    const { bounds } = all.regionAt(field!, field!.wall, IN / 8);
    assert.equal(bounds.bottom, (12 + 1 / 4) * IN);
  });

  it("waits for a lay before it of which the joint is open", () => {
    const text = panelText({ joint: "1/8" }).replace("joint 1/8", RANGE);
    const plan = planOf(text);
    const { lays } = loneLays(plan, plan.walls[0]!);
    const all = new LayGrounds(plan, lays);
    const [dado, field] = lays;
    assert.deepEqual([all.isPlaced(dado!), all.isPlaced(field!)], [true, false]);
    assert.deepEqual([all.jointOf(dado!), all.jointOf(field!)], [null, IN / 8]);
    all.settle(dado!, IN / 4);
    assert.deepEqual([all.jointOf(dado!), all.isPlaced(field!)], [IN / 4, true]);
    // Two courses and a joint of 1/4 in, and one over them.
    const { bounds } = all.regionAt(field!, field!.wall, IN / 8);
    assert.equal(bounds.bottom, (12 + 1 / 2) * IN);
  });

  it("moves with its own joint where it shares that with a lay before it", () => {
    const { lays, all } = grounds({
      more: `lay field {\n bond stack\n ${RANGE}\n over field\n courses 2 of dado, 1 of field\n }`,
      over: "courses 2",
    });
    const [low, high] = [lays[2]!, lays[3]!];
    assert.deepEqual([all.isPlaced(low), all.isPlaced(high)], [true, true]);
    const bottoms = [IN / 8, IN / 4].map(
      (joint) => all.regionAt(high, high.wall, joint).bounds.bottom,
    );
    // A joint under the run, one in it and one over it.
    assert.equal(bottoms[1]! - bottoms[0]!, (3 * IN) / 8);
    all.settle(low, IN / 4);
    assert.equal(all.jointOf(high), IN / 4);
  });

  it("is told of what is set by where it stands", () => {
    const set = "across full tile from left\n set courses 1 to 2 top 12 1/4";
    const { lays, all } = grounds({ dado: set });
    const [dado, field] = lays;
    assert.deepEqual(all.upOf(dado!, IN / 8), { kind: "joint", y: -IN / 16 });
    assert.equal(all.upOf(field!, IN / 8), null);
  });
});
