import assert from "node:assert/strict";
import type { Wall } from "../../../src/model/index.js";
import { ClusterJoints } from "../../../src/solver/room/cluster-joints.js";
import { clustersOf } from "../../../src/solver/room/clusters.js";
import type { Link } from "../../../src/solver/room/linked-walls.js";
import { WallFields } from "../../../src/solver/room/wall-fields.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { askedOf, INCH, MOVING, roomWall } from "./small-room.js";

const RANGE = "1/16 to 1/8";
const FULL = "across full tile from left";

/** The joints of the first walls that hang together, in inches. */
function jointsOf(text: string, links: (walls: readonly Wall[]) => readonly Link[] = () => []) {
  const plan = askedOf(text);
  const { walls } = plan;
  const all = links(walls);
  const wanting = wantingOf(plan, plan.wishes);
  const fieldsAt = (i: number, joint: number) =>
    new WallFields(wanting, walls[i]!, walls[i]!.lays[0]!, joint, { cells: 0 }, walls.length);
  const [cluster] = clustersOf(walls, all);
  return new ClusterJoints(cluster!, walls, all, fieldsAt);
}

const inches = (ways: readonly ReadonlyMap<number, number>[]) =>
  ways.map((way) => [...way.values()].map((nm) => nm / INCH));

describe("the joints of walls that hang together", () => {
  it("are the stated one", () => {
    const joints = jointsOf(roomWall("back", "", FULL, "1/16"));
    assert.deepEqual(inches(joints.ways()), [[1 / 16]]);
    assert.equal(joints.isThinned, false);
  });

  it("are one for all walls that share a range, from its lower end up to its upper", () => {
    const joints = jointsOf(
      ["back", "side"].map((name) => roomWall(name, "", FULL, RANGE)).join(""),
    );
    const ways = inches(joints.ways());
    assert.deepEqual(
      [ways[0], ways.at(-1)],
      [
        [1 / 16, 1 / 16],
        [1 / 8, 1 / 8],
      ],
    );
    assert.ok(ways.length > 2 && ways.every(([a, b]) => a === b));
    assert.deepEqual(
      ways,
      [...ways].sort((a, b) => a[0]! - b[0]!),
    );
  });

  it("are every way to take one for each range", () => {
    const meet: Link = {
      a: 0,
      b: 1,
      end: "left",
      isSayable: true,
      place: 1,
      wanted: "courses-meet",
    };
    const walls = roomWall("back", "", FULL, RANGE) + roomWall("side", "", FULL, "3/16 to 1/4");
    const ways = inches(jointsOf(walls, () => [meet]).ways());
    const [backs, sides] = [0, 1].map((i) => new Set(ways.map((way) => way[i])));
    assert.ok(backs!.size > 2 && sides!.size > 2);
    assert.equal(ways.length, backs!.size * sides!.size);
    assert.equal(new Set(ways.map((way) => way.join())).size, ways.length);
  });

  it("have some between others that are critical for what may move alone", () => {
    const joints = jointsOf(roomWall("back", MOVING, FULL, RANGE));
    const [least, ...more] = joints.ways().map((way) => way.get(0)!);
    const between = joints.between(least!, more.at(-1)!).map((way) => way.get(0)!);
    assert.ok(between.length > 0);
    assert.ok(between.every((joint) => joint > least! && joint < more.at(-1)!));
    assert.deepEqual(joints.between(least!, least!), []);
  });

  it("say where others may be critical that aren't looked for: beside round holes, and where a bond goes on", () => {
    const holed = jointsOf(roomWall("back", "hole valve at 20, 15 across 4", FULL, RANGE));
    holed.ways();
    assert.equal(holed.isThinned, true);
    const bond: Link = {
      a: 0,
      b: 1,
      end: "left",
      isSayable: true,
      place: 1,
      wanted: "bond-goes-on",
    };
    const walls = ["back", "side"].map((name) => roomWall(name, "", FULL, RANGE)).join("");
    const bonded = jointsOf(walls, () => [bond]);
    bonded.ways();
    assert.equal(bonded.isThinned, true);
  });
});
