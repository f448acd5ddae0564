import assert from "node:assert/strict";
import type { Nm } from "../../src/measure/index.js";
import type { Lay } from "../../src/model/index.js";
import { jointBetween, layRegion, plotOf, type Placed } from "../../src/solver/lay-region.js";
import { layWall } from "../../src/solver/lay-wall.js";
import { regionOf } from "../../src/solver/region.js";
import type { Region } from "../../src/solver/index.js";
import { asSettled } from "../../src/solver/start.js";
import { window } from "./choose/model-plan.js";
import { area, layOf, past, place, sidesOf, wallOf, type Several } from "./several-lays.js";

type Corners = readonly [left: Nm, bottom: Nm, right: Nm, top: Nm];

function placed(lay: Lay, [left, bottom, right, top]: Corners, joint = 2): Placed {
  return { lay, joint, box: { left, bottom, right, top } };
}

function regionOn(lay: Lay, others: readonly Placed[] = [], given: Several = {}): Region {
  const { plan, wall } = wallOf([...others.map((other) => other.lay), lay], given);
  return layRegion({ plan, wall, lay, placed: others }, lay.joint.min);
}

/** The wall is tiled from 3 to 997 across and from 3 to 797 up. */
function boundsOn(lay: Lay, others: readonly Placed[] = [], given: Several = {}): Nm[] {
  return sidesOf(regionOn(lay, others, given).bounds);
}

describe("what of a wall's region a lay has", () => {
  it("is all of it where the wall has no other", () => {
    const lay = layOf("field");
    const { plan, wall } = wallOf([lay]);
    assert.deepEqual(layRegion({ plan, wall, lay, placed: [] }, 2), regionOf(plan, wall, 2));
    assert.deepEqual(boundsOn(lay), [3, 3, 997, 797]);
  });

  it("ends at the places that it names", () => {
    const low = layOf("low", { area: area({ top: place(400) }) });
    assert.deepEqual(boundsOn(low), [3, 3, 997, 400]);
    const panel = { left: place(200), right: place(400), bottom: place(300), top: place(500) };
    assert.deepEqual(boundsOn(layOf("panel", { area: area(panel) })), [200, 300, 400, 500]);
  });

  it("ends at the wall's side where a place lies beyond that", () => {
    const lay = layOf("low", { area: area({ left: place(1), top: place(900) }) });
    assert.deepEqual(boundsOn(lay), [3, 3, 997, 797]);
  });

  it("begins one joint past the lay that it names, on each side", () => {
    const other = placed(layOf("other"), [300, 200, 600, 500]);
    const beside = (side: "left" | "right" | "bottom" | "top") =>
      boundsOn(layOf("lay", { area: area({ [side]: past("other") }) }), [other]);
    assert.deepEqual(beside("left"), [602, 3, 997, 797]);
    assert.deepEqual(beside("right"), [3, 3, 298, 797]);
    assert.deepEqual(beside("bottom"), [3, 502, 997, 797]);
    assert.deepEqual(beside("top"), [3, 3, 997, 198]);
  });

  it("is the rest of the wall, one joint past a lay that goes from side to side", () => {
    const rest = layOf("rest");
    const beside = (corners: Corners) => {
      const region = regionOn(rest, [placed(layOf("other"), corners)]);
      assert.deepEqual(region.takeaways, []);
      return sidesOf(region.bounds);
    };
    assert.deepEqual(beside([3, 3, 997, 400]), [3, 402, 997, 797]);
    assert.deepEqual(beside([3, 400, 997, 797]), [3, 3, 997, 398]);
    assert.deepEqual(beside([3, 3, 300, 797]), [302, 3, 997, 797]);
    assert.deepEqual(beside([300, 3, 997, 797]), [3, 3, 298, 797]);
  });

  it("leaves out the lays under it and over it, both", () => {
    const low = placed(layOf("low"), [3, 3, 997, 400]);
    const high = placed(layOf("high"), [3, 600, 997, 797]);
    assert.deepEqual(boundsOn(layOf("rest"), [low, high]), [3, 402, 997, 598]);
  });

  it("has a panel within it cut out with its joint, as an opening is", () => {
    const { bounds, takeaways } = regionOn(layOf("rest"), [
      placed(layOf("panel"), [200, 300, 400, 500]),
    ]);
    assert.deepEqual(sidesOf(bounds), [3, 3, 997, 797]);
    const [patch] = takeaways;
    assert.deepEqual(sidesOf(patch!.box), [198, 298, 402, 502]);
    assert.deepEqual([patch!.opening.kind, patch!.opening.name], ["lay", "panel"]);
    assert.deepEqual(patch!.opening.at, { x: 200, y: 300 });
    assert.deepEqual(patch!.opening.size, { across: 200, up: 200 });
  });

  it("has a band cut out that leaves tile under it and over it", () => {
    const { bounds, takeaways } = regionOn(layOf("rest"), [
      placed(layOf("band"), [3, 300, 997, 400]),
    ]);
    assert.deepEqual(sidesOf(bounds), [3, 3, 997, 797]);
    assert.deepEqual(
      takeaways.map(({ box }) => sidesOf(box)),
      [[1, 298, 999, 402]],
    );
  });

  it("has nothing cut out for a lay that it is past already", () => {
    const low = placed(layOf("low"), [3, 3, 997, 400]);
    const over = layOf("over", { area: area({ bottom: past("low") }) });
    assert.deepEqual(regionOn(over, [low]).takeaways, []);
  });

  it("is as high as its courses where the plan counts them", () => {
    // Three courses of 50 and two joints of 2, from 3.
    const low = layOf("low", { area: area({}, { courses: 3 }) });
    assert.deepEqual(boundsOn(low), [3, 3, 997, 157]);
    // On a lay up to 400: from 402.
    const bounds = { bottom: past("low") };
    const over = layOf("over", { area: area(bounds, { courses: 2 }) });
    assert.deepEqual(boundsOn(over, [placed(low, [3, 3, 997, 400])]), [3, 402, 997, 504]);
  });

  it("is no higher than the wall, however many courses are asked for", () => {
    assert.equal(boundsOn(layOf("low", { area: area({}, { courses: 99 }) }))[3], 797);
  });

  it("has only the openings and the round holes that reach into it", () => {
    const given: Several = {
      openings: [window([600, 600], [100, 100], { movement: 2 })],
      holes: [[500, 200, 40]],
    };
    const low = regionOn(layOf("low", { area: area({ top: place(400) }) }), [], given);
    assert.deepEqual([low.takeaways.length, low.roundHoles.length], [0, 1]);
    const high = regionOn(layOf("high", { area: area({ bottom: place(400) }) }), [], given);
    assert.deepEqual([high.takeaways.length, high.roundHoles.length], [1, 0]);
  });
});

describe("a lay's bound over a measured side", () => {
  // The bottom rises from 3 to 23; it is at 13 in the middle.
  const sides: Several["sides"] = {
    bottom: {
      measured: [
        { at: 0, off: 0 },
        { at: 1000, off: 20 },
      ],
    },
  };

  it("has a corner where the side crosses it", () => {
    const { bottom, bounds } = regionOn(layOf("lay", { area: area({ bottom: place(13) }) }), [], {
      sides,
    });
    assert.deepEqual(bottom, { at: [0, 500, 1000], value: [13, 13, 23] });
    assert.equal(bounds.bottom, 13);
  });

  it("is level where the side lies beyond it everywhere, and leaves the side where that is nearer", () => {
    const bottomAt = (at: Nm) =>
      regionOn(layOf("lay", { area: area({ bottom: place(at) }) }), [], { sides }).bottom;
    assert.deepEqual(bottomAt(100), { at: [0], value: [100] });
    assert.deepEqual(bottomAt(3), { at: [0, 1000], value: [3, 23] });
  });

  it("draws the bounds in to what is left of the side", () => {
    // From 500 on the bottom is at 13 and higher.
    const [, low] = boundsOn(layOf("lay", { area: area({ left: place(500) }) }), [], { sides });
    assert.equal(low, 13);
  });

  it("draws the sides in to what is left of them between bottom and top", () => {
    // The left end leans from 3 to 43 over 800: at 400 it is at 23, and a full tile begins there.
    const leaning = { left: { measured: [0, 800].map((at) => ({ at, off: at / 20 })) } };
    const high = layOf("high", { area: area({ bottom: place(400) }) });
    assert.deepEqual(boundsOn(high, [], { sides: leaning }), [23, 400, 997, 797]);
  });

  it("is drawn in beside a lay where the side runs on lower, or further out, than there", () => {
    // The bottom falls from 3 to -17: under the lay up to 400 it is at -5 at the lowest.
    const falling = { bottom: { measured: [0, 1000].map((at) => ({ at, off: -at / 50 })) } };
    const left = placed(layOf("left"), [3, -5, 400, 797]);
    const beside = regionOn(layOf("rest"), [left], { sides: falling });
    assert.deepEqual([sidesOf(beside.bounds), beside.takeaways], [[402, -17, 997, 797], []]);
    // The left end leans out from 3 to -37 over 800: beside the lay up to 400 it is at -17 at the furthest.
    const leaning = { left: { measured: [0, 800].map((at) => ({ at, off: -at / 20 })) } };
    const low = placed(layOf("low"), [-17, 3, 997, 400]);
    const over = regionOn(layOf("rest"), [low], { sides: leaning });
    assert.deepEqual([over.bounds.bottom, over.takeaways], [402, []]);
  });
});

describe("a lay's bound at a corner that hides a strip", () => {
  // What stands on the other wall, 8 of tile and 3 of bed, hides this one's end up to 11.
  const sides: Several["sides"] = {
    left: { meets: { kind: "corner", wall: "side", lap: "under" } },
  };
  const hiddenFrom = (at: Nm) =>
    regionOn(layOf("lay", { area: area({ left: place(at) }) }), [], { sides }).hiddenLeft;

  it("leaves the strip to the lay that reaches into it", () => {
    const low = regionOn(layOf("low", { area: area({ right: place(400) }) }), [], { sides });
    assert.deepEqual(low.hiddenLeft?.value, [11]);
    assert.deepEqual(hiddenFrom(10)?.value, [11]);
  });

  it("leaves none to a lay that begins where the strip ends", () => {
    assert.equal(hiddenFrom(11), null);
    assert.equal(hiddenFrom(400), null);
  });

  it("does the same at the right", () => {
    const right = { right: { meets: { kind: "corner", wall: "side", lap: "under" } as const } };
    const hiddenTo = (at: Nm) =>
      regionOn(layOf("lay", { area: area({ right: place(at) }) }), [], { sides: right })
        .hiddenRight;
    assert.deepEqual(hiddenTo(990)?.value, [989]);
    assert.equal(hiddenTo(989), null);
  });
});

describe("the joint between two lays", () => {
  const other = (joint: Nm | null, width: Nm) =>
    placed(layOf("other", { area: area({}, { joint }) }), [3, 3, 997, 400], width);

  it("is the wider of both lays' own where neither says another", () => {
    assert.equal(jointBetween(layOf("lay"), 2, other(null, 4)), 4);
    assert.equal(jointBetween(layOf("lay"), 5, other(null, 4)), 5);
  });

  it("is what one of them says, and the later one's before the other's", () => {
    assert.equal(jointBetween(layOf("lay"), 2, other(7, 4)), 7);
    const saying = layOf("lay", { area: area({}, { joint: 1 }) });
    assert.equal(jointBetween(saying, 2, other(7, 4)), 1);
  });

  it("keeps the lays so far apart", () => {
    const rest = layOf("rest");
    assert.equal(boundsOn(rest, [other(7, 2)])[1], 407);
    assert.equal(boundsOn(rest, [other(null, 6)])[1], 406);
    const over = layOf("over", { area: area({ bottom: past("other") }, { joint: 0 }) });
    assert.equal(boundsOn(over, [other(7, 2)])[1], 400);
  });
});

describe("where a laid lay was laid", () => {
  it("is beside the lays that had their places before it", () => {
    const low = layOf("low", { area: area({ top: place(400) }), width: 4 });
    const rest = layOf("rest");
    const { plan, wall } = wallOf([rest, low]);
    const laid = layWall(plan, wall, ({ lay }) => {
      const { across, up } = asSettled(lay);
      return { joint: lay.joint.min, across: across!, up: up!, choice: null };
    });
    const [one, other] = ["low", "rest"].map((name) =>
      laid.lays.find(({ lay }) => lay.name === name),
    );
    assert.deepEqual(plotOf(plan, laid, one!).placed, []);
    assert.deepEqual(plotOf(plan, laid, other!).placed, [placed(low, [3, 3, 997, 400], 4)]);
    // So its region can be found again.
    assert.deepEqual(layRegion(plotOf(plan, laid, other!), 2), other!.region);
  });
});
