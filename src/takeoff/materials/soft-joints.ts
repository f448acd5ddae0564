import type { Nm, Unit } from "../../measure/index.js";
import type { Edge, Opening, Side, Step, Wall } from "../../model/index.js";
import { softPlace } from "../../rules/index.js";
import {
  bareSide,
  type Box,
  type Chain,
  cutTile,
  frameInner,
  openingBox,
  rangeBetween,
  softJoints,
  softLength,
  type SolvedWall,
  valueAfter,
  valueAt,
} from "../../solver/index.js";

/** A soft joint of a wall, to be filled with sealant. */
export interface SoftJoint {
  /** Such as `left`, `sash` or, in the tile, `over course 12`. */
  readonly along: string;
  readonly length: Nm;
  readonly width: Nm;
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** The soft joints of a laid wall: along its sides, round its openings, then in its tile. */
export function softJointsOf(solved: SolvedWall, walls: readonly Wall[], units: Unit): SoftJoint[] {
  const { wall } = solved;
  const sides = SIDES.filter((side) => hasBead(wall, side, walls)).map((along) => ({
    along,
    length: sideLength(solved, along),
    width: wall.edges[along].joint?.width ?? 0,
  }));
  const feet = wall.legs.map(({ foot, side }) => ({
    along: `${side} leg`,
    length: foot.joint?.kind === "movement" ? stepsLength(solved, foot) : 0,
    width: foot.joint?.width ?? 0,
  }));
  const openings = wall.openings.map((opening) => ({
    along: opening.name,
    length: openingLength(solved, opening),
    width: opening.movement ?? 0,
  }));
  return [...sides, ...feet, ...openings, ...jointsInTile(solved, units)].filter(
    ({ length, width }) => length > 0 && width > 0,
  );
}

/** Those that a joint between two lays is made of are told once. */
function jointsInTile(solved: SolvedWall, units: Unit): SoftJoint[] {
  const joints = softJoints(solved).runs.map((run) => ({
    along: softPlace(run.name, units),
    length: softLength(run),
    width: run.to - run.from,
  }));
  return joints.flatMap((joint, i) => {
    const isSame = (other: SoftJoint) => other.along === joint.along && other.width === joint.width;
    if (joints.findIndex(isSame) < i) return [];
    const length = joints.filter(isSame).reduce((sum, each) => sum + each.length, 0);
    return [{ ...joint, length }];
  });
}

/**
 * A corner has one bead, between the tile that laps over and the face of the other: it is counted with the
 * wall whose tile laps over, and with the other one only where that wall states no soft joint.
 */
function hasBead({ name, edges }: Wall, side: Side, walls: readonly Wall[]): boolean {
  const { meets, joint } = edges[side];
  if (joint?.kind !== "movement") return false;
  // An outside corner has one joint: the wall under has it, or both walls of a mitre.
  if (meets.kind === "outside")
    return meets.lap === "under" || (meets.lap === "mitre" && side === "right");
  if (meets.kind !== "corner" || meets.lap === "over") return true;
  const other = walls.find((wall) => wall.name === meets.wall && wall.lays.length > 0);
  return !SIDES.some((answer) => {
    const edge = other?.edges[answer];
    if (edge?.joint?.kind !== "movement" || edge.joint.width === 0) return false;
    return edge.meets.kind === "corner" && edge.meets.lap === "over" && edge.meets.wall === name;
  });
}

/** The bare side from corner to corner, less what an opening takes of it. */
function sideLength(solved: SolvedWall, side: Side): Nm {
  const { wall, region } = solved;
  const { edges, size } = wall;
  const isLevel = side === "bottom" || side === "top";
  const base = side === "right" ? size.across : side === "top" ? size.up : 0;
  const chain = bareSide(edges[side], base);
  const [from, to] = isLevel
    ? [meetingAt(wall, "left", chain), meetingAt(wall, "right", chain)]
    : [meetingAt(wall, "bottom", chain), meetingAt(wall, "top", chain)];
  const taken = [...region.takeaways, ...wall.steps.map((box) => ({ box }))]
    .filter(({ box }) => reachesPast(box, side, region[side]))
    .map(({ box }): Stretch => (isLevel ? [box.left, box.right] : [box.bottom, box.top]));
  return openStretches(from, to, taken).reduce(
    (sum, [start, end]) => sum + chainLength(chain, start, end),
    stepsLength(solved, wall.edges[side]),
  );
}

function bareSides({ edges, size }: Wall): Readonly<Record<Side, Chain>> {
  return {
    left: bareSide(edges.left, 0),
    right: bareSide(edges.right, size.across),
    bottom: bareSide(edges.bottom, 0),
    top: bareSide(edges.top, size.up),
  };
}

/** How long the wall's edge is along the steps and risers that an edge meets: as far as the bare wall reaches there. */
function stepsLength(solved: SolvedWall, edge: Edge): Nm {
  const { wall, region } = solved;
  const bare = bareSides(wall);
  return wall.steps.reduce(
    (sum, step) => {
      const met = SIDES.filter((side) => step.meets[side]?.origin === edge.origin);
      return met.reduce((length, side) => {
        // A sliver of a nanometre along the step shows where it has wall beside it, and no opening.
        const strip = besideStep(step, side);
        const boxes = [
          ...wall.steps.filter((other) => other !== step),
          ...region.takeaways.map(({ box }) => box),
        ];
        const parts = cutTile(strip, bare, { boxes, circles: [] });
        const isUpright = side === "left" || side === "right";
        return parts.reduce(
          (along, { bounds }) =>
            along + (isUpright ? bounds.top - bounds.bottom : bounds.right - bounds.left),
          length,
        );
      }, sum);
    },
    risersLength(solved, edge),
  );
}

function risersLength({ wall, region }: SolvedWall, { side }: Edge): Nm {
  const boxes = region.takeaways.map(({ box }) => box);
  return wall.risers
    .filter(({ edge }) => edge.side === side)
    .flatMap(({ x, low, high, edge }) => {
      const beside = edge.side === "left" ? { left: x, right: x + 1 } : { left: x - 1, right: x };
      return cutTile({ ...beside, bottom: low, top: high }, bareSides(wall), {
        boxes,
        circles: [],
      });
    })
    .reduce((sum, { bounds }) => sum + bounds.top - bounds.bottom, 0);
}

function besideStep({ left, bottom, right, top }: Step, side: Side): Box {
  switch (side) {
    case "left":
      return { left: left - 1, bottom, right: left, top };
    case "right":
      return { left: right, bottom, right: right + 1, top };
    case "bottom":
      return { left, bottom: bottom - 1, right, top: bottom };
    case "top":
      return { left, bottom: top, right, top: top + 1 };
  }
}

/** Where a side begins or ends: at the neighbouring bare side, as high or as far along as its corner is. */
function meetingAt({ edges, size }: Wall, neighbour: Side, chain: Chain): Nm {
  const base = neighbour === "right" ? size.across : neighbour === "top" ? size.up : 0;
  const beside = bareSide(edges[neighbour], base);
  return valueAt(beside, valueAt(chain, base));
}

/** Whether an opening leaves no tile between itself and the side. */
function reachesPast(box: Box, side: Side, chain: Chain): boolean {
  const isLevel = side === "bottom" || side === "top";
  const [from, to] = isLevel ? [box.left, box.right] : [box.bottom, box.top];
  const { low, high } = rangeBetween(chain, from, to);
  return side === "left" || side === "bottom" ? box[side] <= low : box[side] >= high;
}

type Stretch = readonly [from: Nm, to: Nm];

/** What is left between two places when some stretches, in any order, are taken. */
function openStretches(from: Nm, to: Nm, taken: readonly Stretch[]): Stretch[] {
  const stretches: Stretch[] = [];
  let start = from;
  for (const [left, right] of [...taken].sort((a, b) => a[0] - b[0])) {
    if (left > start) stretches.push([start, Math.min(left, to)]);
    start = Math.max(start, right);
  }
  if (start < to) stretches.push([start, to]);
  return stretches.filter(([left, right]) => left < right);
}

/** The true length of a measured side between two places, each straight part rounded up; without its risers. */
function chainLength(chain: Chain, from: Nm, to: Nm): Nm {
  const places = [...new Set([from, ...chain.at.filter((at) => at > from && at < to), to])];
  let length = 0;
  for (let i = 1; i < places.length; i++) {
    const run = places[i]! - places[i - 1]!;
    const rise = valueAt(chain, places[i]!) - valueAfter(chain, places[i - 1]!);
    length += rise === 0 ? run : Math.ceil(Math.hypot(run, rise));
  }
  return length;
}

/** The sides of an opening (with a frame: inside it) beyond which the wall goes on. */
function openingLength({ region }: SolvedWall, opening: Opening): Nm {
  const takeaway = region.takeaways.find((each) => each.opening === opening);
  if (!takeaway) return 0;
  const box = frameInner(opening) ?? openingBox(opening);
  const floor = rangeBetween(region.bottom, box.left, box.right).low;
  const ceiling = rangeBetween(region.top, box.left, box.right).high;
  const bottom = opening.reaches === "floor" ? floor : box.bottom;
  const top = opening.reaches === "ceiling" ? ceiling : box.top;
  const open = SIDES.filter((side) => !reachesPast(takeaway.box, side, region[side]));
  return open.reduce(
    (sum, side) =>
      sum + (side === "left" || side === "right" ? top - bottom : box.right - box.left),
    0,
  );
}
