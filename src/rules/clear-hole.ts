import type { Nm } from "../measure/index.js";
import { type Hole, plateReach } from "../model/index.js";
import {
  encloses,
  layRound,
  overlaps,
  pieceBounds,
  type RoundHole,
  softBox,
  softJoints,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import { coveredBox } from "./hole-soft-joint.js";
import { rimJoints, sidesInJoints } from "./hole-plate-rim.js";
import { plateOvers } from "./plate-overs.js";
import { HOLE_CLEAR, lengthLimit, PLATE_LAP } from "./trade.js";

type Place = Hole["at"];

/** A stretch that a hole or its plate is to stay off, one way: from its lower to its higher side. */
interface Barred {
  readonly way: "x" | "y";
  /** Where the hole's middle would have to be: at most the one, or at least the other. */
  readonly most: Nm;
  readonly least: Nm;
}

/**
 * The places nearest to a hole's own at which it is as clear of soft joints of the tile as of its tile's edge, and its plate
 * as far past them as it laps over the hole.
 */
export function clearOfSoftJoints(
  { plan }: SolvedPlan,
  wall: SolvedWall,
  { hole, box }: RoundHole,
): Place[] {
  const covered = coveredBox(hole, box);
  const limit = lengthLimit(plan.limits, "hole", HOLE_CLEAR);
  const radius = (box.right - box.left) / 2;
  const reach = plateReach(hole);
  const barred = softJoints(wall)
    .runs.filter((run) => overlaps(covered, softBox(run)))
    .map(({ way, from, to }): Barred => {
      const plate = way === "upright" ? reach.across : reach.up;
      const off = Math.max(radius + limit, hole.plate ? plate + PLATE_LAP : 0);
      return { way: way === "upright" ? "x" : "y", most: from - off, least: to + off };
    });
  return nearestOff(wall, hole, barred);
}

/** The places nearest to a hole's own at which its plate's rim lies on tile, as far past a joint as a plate laps over a hole. */
export function rimsOnTile(wall: SolvedWall, hole: Hole): Place[] {
  const lay = layRound(wall, hole);
  if (!lay) return [];
  const { across, up } = plateReach(hole);
  const barred = rimJoints(hole, lay).map(({ side, from, to }): Barred => {
    const way = side === "left" || side === "right" ? "x" : "y";
    const reach = way === "x" ? across : up;
    const middle = side === "left" || side === "bottom" ? reach : -reach;
    return { way, most: from - PLATE_LAP + middle, least: to + PLATE_LAP + middle };
  });
  return nearestOff(wall, hole, barred);
}

/** Off all of it each way, the nearest first; where something else is in the way there, it is no place. */
function nearestOff(wall: SolvedWall, hole: Hole, barred: readonly Barred[]): Place[] {
  const ways = (way: "x" | "y"): Nm[] => {
    const own = barred.filter((each) => each.way === way);
    if (own.length === 0) return [hole.at[way]];
    return [Math.min(...own.map(({ most }) => most)), Math.max(...own.map(({ least }) => least))];
  };
  const far = ({ x, y }: Place): Nm => Math.abs(x - hole.at.x) + Math.abs(y - hole.at.y);
  return ways("x")
    .flatMap((x) => ways("y").map((y) => ({ x, y })))
    .filter((at) => isClear(wall, { ...hole, at }, hole))
    .sort((a, b) => far(a) - far(b));
}

/** Whether a hole that is moved lies on tile of the same lay, with its plate on it, clear of soft joints and of other holes. */
function isClear(wall: SolvedWall, moved: Hole, own: Hole): boolean {
  const lay = layRound(wall, own);
  const round = wall.region.roundHoles.find(({ hole }) => hole === own);
  if (!lay || !round) return false;
  const [right, up] = [moved.at.x - own.at.x, moved.at.y - own.at.y];
  const { box } = round;
  const there = {
    left: box.left + right,
    right: box.right + right,
    bottom: box.bottom + up,
    top: box.top + up,
  };
  const covered = coveredBox(moved, there);
  const others = wall.region.roundHoles.filter(({ hole }) => hole !== own);
  return (
    encloses(lay.region.bounds, covered) &&
    sidesInJoints(moved, lay).length === 0 &&
    plateOvers(wall, moved).length === 0 &&
    !softJoints(wall).runs.some((run) => overlaps(covered, softBox(run))) &&
    !others.some((other) => overlaps(covered, coveredBox(other.hole, other.box)))
  );
}

/** The nearest place at which a hole in the middle of tile leaves enough to the tile's edges; null where none does. */
export function clearOfEdges(
  plan: SolvedPlan,
  { pieces }: SolvedLay,
  { hole, box }: RoundHole,
): Place | null {
  const limit = lengthLimit(plan.plan.limits, "hole", HOLE_CLEAR);
  const near = [...pieces.shapes.keys()]
    .map((i) => pieceBounds(pieces, i))
    .filter((piece) => overlaps(piece, box));
  const way = (at: Nm, from: "left" | "bottom", to: "right" | "top"): Nm | null => {
    const holding = near.filter((piece) => piece[from] < box[from] && box[to] < piece[to]);
    // Across a joint it leaves no strip.
    if (holding.length < near.length) return at;
    const least = Math.max(...holding.map((piece) => piece[from])) + limit + (at - box[from]);
    const most = Math.min(...holding.map((piece) => piece[to])) - limit - (box[to] - at);
    return least > most ? null : Math.min(Math.max(at, least), most);
  };
  const x = way(hole.at.x, "left", "right");
  const y = way(hole.at.y, "bottom", "top");
  return x === null || y === null || (x === hole.at.x && y === hole.at.y) ? null : { x, y };
}
