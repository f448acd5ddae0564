import type { Nm } from "../../measure/index.js";
import { pieceBounds } from "../../solver/index.js";
import type { PieceToCut } from "../cuts/pieces-to-cut.js";
import { EDGE, edgesOf, hasEdges, turnedEdges, type Edges, type Turns } from "./edges.js";
import type { Face } from "./face.js";

/** A piece that wants a rectangle out of some tile. */
export interface Demand {
  readonly label: string;
  /** Counts the courses of all walls in order, so that pieces of one course have the same. */
  readonly course: number;
  readonly width: Nm;
  readonly height: Nm;
  /** The edges that have to be the tile's own. */
  readonly needs: Edges;
}

/** A way to hold a piece to its tile: its size and the edges it needs, as they lie then. */
export interface Pose {
  readonly turns: Turns;
  readonly width: Nm;
  readonly height: Nm;
  readonly needs: Edges;
}

export function demandOf({ lay, label, index, factory }: PieceToCut, course: number): Demand {
  const { left, bottom, right, top } = pieceBounds(lay.pieces, index);
  return {
    label,
    course,
    width: right - left,
    height: top - bottom,
    needs: edgesOf(factory),
  };
}

/**
 * Every way to cut a piece from a whole tile, the unturned first. A directional tile's are not turned;
 * none is mirrored, since the glaze is on one face.
 */
export function posesOf(demand: Demand, face: Face): Pose[] {
  const turns: readonly Turns[] = face.directional ? [0] : [0, 1, 2, 3];
  return turns.map((turn) => posed(demand, turn)).filter((pose) => fitsTile(pose, face));
}

/** Whether a piece may be cut from a whole tile turned by a quarter; either way round then, since both take as much. */
export function mayLie(demand: Demand, face: Face): boolean {
  return !face.directional && fitsTile(posed(demand, 1), face);
}

function posed({ width, height, needs }: Demand, turns: Turns): Pose {
  const lies = turns % 2 === 1;
  return {
    turns,
    width: lies ? height : width,
    height: lies ? width : height,
    needs: turnedEdges(needs, turns),
  };
}

function fitsTile(pose: Pose, face: Face): boolean {
  const { width, height, needs } = pose;
  const isAcross = hasEdges(needs, EDGE.left | EDGE.right);
  const isUp = hasEdges(needs, EDGE.bottom | EDGE.top);
  return (
    (isAcross ? width === face.across : width <= face.across) &&
    (isUp ? height === face.up : height <= face.up)
  );
}
