import assert from "node:assert/strict";
import { besideMost, isTold, meetingLays } from "../../src/solver/corner-lays.js";
import { NM_PER } from "../../src/measure/index.js";
import { type DadoText, dadoText } from "../rooms/dado-text.js";
import { solveText } from "../support/solve-text.js";

const IN = NM_PER.inch;
const endsOf = (parts: DadoText = {}) => {
  const [back, side] = solveText(dadoText(parts)).solved.walls;
  return [
    { wall: side!, side: "left" },
    { wall: back!, side: "right" },
  ] as const;
};

describe("the lays that meet at a corner", () => {
  it("are each of one wall's with the one that stands beside most of it", () => {
    const pairs = (parts: DadoText) =>
      meetingLays(...endsOf(parts))
        .map(({ lay, other }) => `${lay.lay.name} ${other.lay.name}`)
        .sort();
    assert.deepEqual(pairs({}), ["dado dado", "field field"]);
    assert.deepEqual(pairs({ sideTop: "30" }), ["dado dado", "field field"]);
    // Up to 10 in, the side's field has 14 of its 38 in beside the dado.
    assert.deepEqual(pairs({ sideTop: "10" }), ["dado dado", "field field"]);
    // Up to 44 in, the dado has 24 in beside the dado and 20 beside the field.
    assert.deepEqual(pairs({ sideTop: "44" }), ["dado dado", "field field"]);
    // Up to 3 in, what is over it stands beside more of the field all the same.
    assert.deepEqual(pairs({ sideTop: "3" }), ["dado dado", "field field"]);
  });

  it("are the one beside most of a stretch of height; none where nothing is", () => {
    const [, back] = endsOf();
    const name = (bottom: number, top: number) =>
      besideMost({ bottom: bottom * IN, top: top * IN }, back)?.lay.name ?? null;
    assert.equal(name(10, 37), "dado");
    assert.equal(name(11, 47), "field");
    assert.equal(name(50, 60), null);
  });

  it("leave out what doesn't reach the corner", () => {
    const panel = dadoText().replace(
      /lay dado \{\n {4}covers bottom to 24/,
      "lay dado {\n    at 10, 4\n    size 20 x 20",
    );
    const [back, side] = solveText(panel.replace("    over dado\n", "")).solved.walls;
    const pairs = meetingLays({ wall: side!, side: "left" }, { wall: back!, side: "right" });
    assert.deepEqual(pairs.map(({ lay, other }) => `${lay.lay.name} ${other.lay.name}`).sort(), [
      "dado field",
      "field field",
    ]);
  });
});

describe("a corner", () => {
  it("is told of the wall that laps over, of a mitre of the one at its right", () => {
    const corner = (lap: "under" | "over") => ({ kind: "corner", wall: "side", lap }) as const;
    const mitre = { kind: "outside", wall: "side", lap: "mitre" } as const;
    assert.deepEqual(
      [isTold(corner("over"), "right"), isTold(corner("under"), "right")],
      [true, false],
    );
    assert.deepEqual([isTold(mitre, "left"), isTold(mitre, "right")], [true, false]);
  });
});
