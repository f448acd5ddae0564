import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { innerSides, layRegion } from "../../src/solver/lay-region.js";
import { layPairs, type StandingLone } from "../../src/solver/lay-pairs.js";
import { plotFor } from "../../src/solver/lay-wall.js";
import { loneLays } from "../../src/solver/lone-lays.js";
import { regionOf } from "../../src/solver/region.js";
import { planOf } from "../language/telling.js";
import { type DadoText, dadoText } from "../rooms/dado-text.js";

const JOINT = NM_PER.inch / 16;

/** The pairs of the two walls' lays, by their names; the dado is under the field. */
function pairs(parts: DadoText) {
  const plan = planOf(dadoText(parts));
  const all = plan.walls.flatMap((wall) =>
    loneLays(plan, wall).lays.map((lone): StandingLone => {
      const up = { kind: "full-course", from: "bottom" } as const;
      const across = { kind: "full-tile", from: "left" } as const;
      const plot = plotFor(plan, wall, lone.lay.name, () => ({
        ...{ joint: JOINT, across, up, choice: null },
      }));
      const region = layRegion(plot, JOINT);
      return { lone, region, inner: innerSides(region, regionOf(plan, wall, JOINT)) };
    }),
  );
  const name = (i: number) => `${all[i]!.lone.of.name} ${all[i]!.lone.lay.name}`;
  return layPairs(all, () => true).map(({ a, b, ...rest }) => ({
    a: name(a),
    b: name(b),
    ...rest,
  }));
}

describe("the lays that meet at a corner", () => {
  it("are those at one height, each told once", () => {
    const open = { isBonded: true, isSayable: true, end: "right" };
    assert.deepEqual(pairs({}), [
      { a: "back dado", b: "side dado", ...open },
      { a: "back field", b: "side field", ...open },
    ]);
  });

  it("go with the one beside most of them, of the wall that the corner is told of", () => {
    // The side is all dado: as much of it stands beside the back's dado as beside its field.
    const found = pairs({ sideTop: "50" });
    assert.deepEqual(
      found.map(({ a, b }) => [a, b]),
      [["back dado", "side dado"]],
    );
    // Its field from 10 in on stands beside most of the back's field; but the back's dado stands beside more of that than of its dado.
    const low = pairs({ sideTop: "10" });
    assert.deepEqual(
      low.map(({ a, b, isSayable }) => [a, b, isSayable]),
      [
        ["back dado", "side dado", false],
        ["back field", "side field", true],
      ],
    );
  });
});
