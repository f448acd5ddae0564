import { divideRounded, type Nm } from "../measure/index.js";
import {
  type Edge,
  edgeTrim,
  type Hole,
  type Leg,
  type Opening,
  type Plan,
  type Side,
  type Step,
  type Wall,
} from "../model/index.js";
import { grown, type Box } from "./box.js";
import { rangeBetween, type Chain } from "./chain.js";
import { type RiserMoves, sideDrawnIn } from "./draw-in.js";
import type { Region, Takeaway } from "./solved.js";

/** The tiled region of a wall whose lay has this joint; edges and openings are drawn in as designed. */
export function regionOf(plan: Plan, wall: Wall, joint: Nm): Region<Opening> {
  const side = (name: Side, base: Nm) => bareSide(wall.edges[name], base);
  const drawn = (name: Side, bare: Chain, inward: 1 | -1): Chain => {
    const edge = wall.edges[name];
    const inset = edgeInset(plan, edge, joint);
    return sideDrawnIn(
      edge,
      bare,
      inset,
      inward,
      riserMoves(wall, name, (riser) => stepInset(riser, joint)),
    );
  };
  const bareLeft = side("left", 0);
  const bareRight = side("right", wall.size.across);
  const bareBottom = side("bottom", 0);
  const left = drawn("left", bareLeft, 1);
  const right = drawn("right", bareRight, -1);
  const bottom = drawn("bottom", bareBottom, 1);
  const bareTop = side("top", wall.size.up);
  const top = drawn("top", bareTop, -1);
  const ends = {
    floor: Math.min(...bareBottom.value),
    ceiling: Math.max(...bareTop.value),
  };
  return {
    left,
    right,
    bottom,
    top,
    hiddenLeft: hiddenSide(plan, wall.edges.left, bareLeft, 1),
    hiddenRight: hiddenSide(plan, wall.edges.right, bareRight, -1),
    hiddenBottom: hiddenSide(plan, wall.edges.bottom, bareBottom, 1),
    hiddenTop: hiddenSide(plan, wall.edges.top, bareTop, -1),
    takeaways: wall.openings.map((opening) => takeawayOf(opening, joint, ends)),
    roundHoles: wall.holes.map((hole) => ({ hole, box: holeBox(hole) })),
    steps: wall.steps.map((step) => grownStep(step, joint)),
    between: betweenLegs(wall),
    bounds: boundsOfSides(wall, left, right, bottom, top),
  };
}

/** What stands on the substrate of a wall: its thickest tile and its bed; nothing where no tile is laid. */
export function buildOf(plan: Plan, wallName: string): Nm {
  const lays = plan.walls.find((wall) => wall.name === wallName)?.lays ?? [];
  if (lays.length === 0) return 0;
  return Math.max(...lays.map(({ tile }) => tile.thickness)) + plan.bed;
}

/** The outer rectangle of an opening's frame, or null where it has none. A door's goes to the floor. */
export function frameOuter(opening: Opening): Box | null {
  if (!opening.frame) return null;
  return grown(openingBox(opening), opening.frame.trim.face.across - opening.frame.inset);
}

/** The inner rectangle of an opening's frame, or null where it has none. */
export function frameInner(opening: Opening): Box | null {
  return opening.frame ? grown(openingBox(opening), -opening.frame.inset) : null;
}

export function openingBox({ at, size }: Opening): Box {
  return { left: at.x, bottom: at.y, right: at.x + size.across, top: at.y + size.up };
}

/** A side of the bare wall, bent by its site readings; `base` is where it would be without them. */
export function bareSide(edge: Edge, base: Nm): Chain {
  if (edge.measured.length === 0) return { at: [0], value: [base] };
  return {
    at: edge.measured.map((reading) => reading.at),
    value: edge.measured.map((reading) => base + reading.off),
  };
}

/** How far the tile stays inside the bare wall's side. */
function edgeInset(plan: Plan, edge: Edge, joint: Nm): Nm {
  const { meets } = edge;
  const width = edge.joint?.width ?? 0;
  const trim = edgeTrim(meets);
  const trimmed = trim ? trim.face.across + joint : 0;
  if (meets.kind === "free") return trimmed;
  if (meets.kind === "outside") {
    const outer = -buildOf(plan, meets.wall);
    if (meets.lap === "over") return outer + trimmed;
    // Under, the tile ends behind the other's back, which stands the bed before this wall's end.
    return meets.lap === "under" ? width - plan.bed : outer + divideRounded(width, 2);
  }
  if (meets.kind === "corner" && meets.lap === "over") return buildOf(plan, meets.wall) + width;
  return width;
}

/** One wall's side at a corner, and the joint of its lay. */
export interface CornerSide {
  readonly edge: Edge;
  readonly joint: Nm;
}

/**
 * How far it is, along the surface, from what is seen of one wall's tile to that of the other's at their
 * corner: inside, the joint of the wall that laps over; outside, all that stands between them, a trim too.
 */
export function cornerGap(plan: Plan, one: CornerSide, other: CornerSide): Nm {
  const sides = [one, other];
  const lapping = sides.find(
    ({ edge: { meets } }) => meets.kind === "corner" && meets.lap === "over",
  );
  if (lapping) return lapping.edge.joint?.width ?? 0;
  return sides.reduce((sum, { edge, joint }) => {
    const { meets } = edge;
    if (meets.kind !== "outside") return sum;
    return sum + buildOf(plan, meets.wall) + edgeInset(plan, edge, joint);
  }, 0);
}

/** Where the other wall's tile ends over this one's, seen from `inward` (1 rightwards or up, -1 leftwards or down). */
function hiddenSide(plan: Plan, edge: Edge, bare: Chain, inward: 1 | -1): Chain | null {
  const { meets } = edge;
  if (meets.kind !== "corner" || meets.lap !== "under") return null;
  const build = buildOf(plan, meets.wall);
  return build > (edge.joint?.width ?? 0) ? sideDrawnIn(edge, bare, build, inward) : null;
}

/** The bare wall's lowest and highest points, to which what stands on the floor or hangs from the ceiling goes on. */
export interface WallEnds {
  readonly floor: Nm;
  readonly ceiling: Nm;
}

/** A box drawn out to the floor or the ceiling where its opening goes on to it. */
export function reaching(box: Box, { reaches }: Opening, { floor, ceiling }: WallEnds): Box {
  if (reaches === "floor") return { ...box, bottom: Math.min(box.bottom, floor) };
  return reaches === "ceiling" ? { ...box, top: Math.max(box.top, ceiling) } : box;
}

function takeawayOf(opening: Opening, joint: Nm, ends: WallEnds): Takeaway<Opening> {
  const outer = frameOuter(opening);
  const box = outer ? grown(outer, joint) : grown(openingBox(opening), opening.movement ?? 0);
  return { opening, box: reaching(box, opening, ends) };
}

/** A step grown by the joint of each side that the tile meets. */
export function grownStep(step: Step, joint: Nm): Box {
  const out = (side: Side): Nm => {
    const edge = step.meets[side];
    return edge ? stepInset(edge, joint) : 0;
  };
  return {
    left: step.left - out("left"),
    bottom: step.bottom - out("bottom"),
    right: step.right + out("right"),
    top: step.top + out("top"),
  };
}

/** How far the risers of a side move where each moves as its edge says. */
export function riserMoves({ risers }: Wall, side: Side, moveOf: (edge: Edge) => Nm): RiserMoves {
  const move = (faces: "left" | "right"): Nm => {
    const riser = risers.find(({ of, edge }) => of === side && edge.side === faces);
    return riser ? moveOf(riser.edge) : 0;
  };
  return { left: move("left"), right: move("right") };
}

/** How far the tile stays off a step or a riser. */
export function stepInset(edge: Edge, joint: Nm): Nm {
  if (edge.meets.kind !== "free") return edge.joint?.width ?? 0;
  return edge.meets.trim ? edge.meets.trim.face.across + joint : 0;
}

function betweenLegs({ size, legs }: Wall): Region["between"] {
  const across = (side: Leg["side"]) => legs.find((leg) => leg.side === side)?.across;
  const [left, right] = [across("left"), across("right")];
  return {
    left: left ?? -Infinity,
    right: right === undefined ? Infinity : size.across - right,
  };
}

/** The box that a hole fills; half its diameter is rounded once, so that its centre stays whole. */
function holeBox({ at, across }: Hole): Box {
  return grown({ left: at.x, bottom: at.y, right: at.x, top: at.y }, divideRounded(across, 2));
}

function boundsOfSides(wall: Wall, left: Chain, right: Chain, bottom: Chain, top: Chain): Box {
  const from = Math.min(0, ...bottom.value);
  const l = rangeBetween(left, from, wall.size.up).low;
  const r = rangeBetween(right, from, wall.size.up).high;
  return {
    left: l,
    right: r,
    bottom: rangeBetween(bottom, l, r).low,
    top: rangeBetween(top, l, r).high,
  };
}
