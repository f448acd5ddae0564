import type { Nm } from "../measure/index.js";
import { type AllowingBlock, isSolid, type Origin, type Side, type Wall } from "../model/index.js";
import { edgeMeets, openingName } from "./words.js";

/** A place where the tile meets something that moves, and the soft joint that stands there. */
export interface MovementPlace {
  readonly origin: Origin;
  readonly blocks: readonly AllowingBlock[];
  /** `at the bottom (pan)`, `between window sash and its frame`. */
  readonly name: string;
  /** Whether setters also leave a narrower one here: at a window, a door, a pan or a tub. */
  readonly narrowToo: boolean;
  /** The soft joint's width; null when there is none. */
  readonly soft: Nm | null;
  /** Whether a hard joint stands there instead. */
  readonly hard: boolean;
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/**
 * The places of a wall that want a soft joint: its edges, but free ones, and its windows and doors. Of changes of
 * plane the source names inside corners alone, so that an outside one wants none.
 */
export function movementPlaces(wall: Wall): MovementPlace[] {
  return [...edgePlaces(wall), ...openingPlaces(wall)];
}

function edgePlaces(wall: Wall): MovementPlace[] {
  const sides = SIDES.map((side) => ({ edge: wall.edges[side], at: `the ${side}` }));
  const feet = wall.legs.map(({ foot, side }) => ({
    edge: foot,
    at: `the foot of the ${side} leg`,
  }));
  return [...sides, ...feet]
    .filter(({ edge: { meets } }) => meets.kind !== "free" && meets.kind !== "outside")
    .map(({ edge, at }) => ({
      origin: edge.origin,
      blocks: [wall],
      name: `at ${at} (${edgeMeets(edge)})`,
      narrowToo: edge.meets.kind === "pan" || edge.meets.kind === "tub",
      soft: edge.joint?.kind === "movement" && edge.joint.width > 0 ? edge.joint.width : null,
      hard: edge.joint?.kind === "joint",
    }));
}

/**
 * A niche is lined with tile of its own: nothing there moves apart. At a bench, a curb or a soffit the plane changes
 * (TCNA EJ171).
 */
function openingPlaces(wall: Wall): MovementPlace[] {
  return wall.openings
    .filter((opening) => opening.kind !== "niche")
    .map((opening) => ({
      origin: opening.origin,
      blocks: [opening, wall],
      name: opening.frame
        ? `between ${openingName(opening)} and its frame`
        : `at ${openingName(opening)}`,
      narrowToo: !isSolid(opening),
      soft: opening.movement === 0 ? null : opening.movement,
      hard: false,
    }));
}
