import assert from "node:assert/strict";
import type { Lay } from "../../../src/model/index.js";
import { layStrips, partsIn, runOf } from "../../../src/solver/soft/between-lays.js";
import { layWall } from "../../../src/solver/lay-wall.js";
import { asSettled } from "../../../src/solver/start.js";
import { window } from "../choose/model-plan.js";
import { area, layOf, past, place, type Several, sidesOf, wallOf } from "../several-lays.js";

function laid(lays: readonly Lay[], given: Several = {}) {
  const { plan, wall } = wallOf(lays, given);
  return layWall(plan, wall, ({ lay }) => {
    const { across, up } = asSettled(lay);
    return { joint: lay.joint.min, across: across!, up: up!, choice: null };
  });
}

/** `low | high top 3 400 997 402`: the lays, the earlier one's side, and the joint's box. */
const strips = (lays: readonly Lay[]) =>
  layStrips(laid(lays)).map(
    ({ earlier, later, side, box }) =>
      `${earlier.lay.name} | ${later.lay.name} ${side} ${sidesOf(box).join(" ")}`,
  );

describe("the joints between lays", () => {
  it("are none on a wall with one lay", () => {
    assert.deepEqual(strips([layOf("field")]), []);
  });

  it("lie over a lay that another one stands on, from side to side", () => {
    const low = layOf("low", { area: area({ top: place(400) }) });
    assert.deepEqual(strips([low, layOf("high")]), ["low | high top 3 400 997 402"]);
    assert.deepEqual(strips([layOf("high"), low]), ["low | high top 3 400 997 402"]);
  });

  it("are as wide as the plan says", () => {
    const low = layOf("low", { area: area({ top: place(400) }, { joint: 7 }) });
    assert.deepEqual(strips([low, layOf("high")]), ["low | high top 3 400 997 407"]);
  });

  it("lie beside a lay that has one next to it", () => {
    const left = layOf("left", { area: area({ right: place(300) }) });
    assert.deepEqual(strips([left, layOf("right")]), ["left | right right 300 3 302 797"]);
  });

  it("go round a panel, the upright ones past its corners", () => {
    const bounds = { left: place(200), right: place(400), bottom: place(300), top: place(500) };
    assert.deepEqual(strips([layOf("field"), layOf("panel", { area: area(bounds) })]), [
      "panel | field left 198 298 200 502",
      "panel | field right 400 298 402 502",
      "panel | field bottom 200 298 400 300",
      "panel | field top 200 500 400 502",
    ]);
  });

  it("end where the later lay does", () => {
    const low = layOf("low", { area: area({ top: place(400) }) });
    const left = layOf("left", { area: area({ bottom: past("low"), right: place(300) }) });
    assert.deepEqual(strips([low, left, layOf("rest")]), [
      "low | left top 3 400 300 402",
      "low | rest top 302 400 997 402",
      "left | rest right 300 402 302 797",
    ]);
  });

  it("are none where tile is missing between two lays", () => {
    const low = layOf("low", { area: area({ top: place(200) }) });
    const high = layOf("high", { area: area({ bottom: place(500) }) });
    assert.deepEqual(strips([low, high]), []);
  });

  it("are level or upright, with two sides and two ends", () => {
    const low = layOf("low", { area: area({ top: place(400) }) });
    const [strip] = layStrips(laid([low, layOf("high")]));
    const reach = { from: 3, to: 997 };
    assert.deepEqual(runOf(strip!), { way: "level", from: 400, to: 402, reach });
  });

  it("are what openings and other boxes leave of them", () => {
    const wall = laid([layOf("field")], {
      openings: [window([450, 350], [100, 100], { movement: 5 })],
    });
    const box = { left: 3, bottom: 400, right: 997, top: 402 };
    const parts = partsIn(null, wall.region, box, [{ ...box, left: 900 }]);
    const { left, right } = wall.region.takeaways[0]!.box;
    assert.deepEqual(
      parts.map(({ bounds }) => [bounds.left, bounds.right]),
      [
        [3, left],
        [right, 900],
      ],
    );
  });
});
