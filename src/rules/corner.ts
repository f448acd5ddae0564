import type { Edge, Side } from "../model/index.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../solver/index.js";

/** The side of a wall at a corner. */
export type EndSide = Side & ("left" | "right");

/** One wall at a corner, with its tile. */
export interface CornerWall {
  readonly wall: SolvedWall;
  readonly lay: SolvedLay;
  readonly side: EndSide;
}

/** A corner that both walls agree on, where both are tiled. */
export interface Corner {
  /** The wall whose tile covers the other's end: it is set last, and follows. */
  readonly over: CornerWall;
  readonly under: CornerWall;
  /** The covering wall's side. */
  readonly edge: Edge;
}

const END_SIDES: readonly EndSide[] = ["left", "right"];

/** The corners at which this wall's tile covers another's, so that each corner is looked at once. */
export function cornersOver(wall: SolvedWall, { walls }: SolvedPlan): Corner[] {
  return END_SIDES.flatMap((side) => {
    const edge = wall.wall.edges[side];
    const { meets } = edge;
    if (meets.kind !== "corner" || meets.lap !== "over") return [];
    const other = walls.find(({ wall: { name } }) => name === meets.wall);
    const answer = side === "left" ? "right" : "left";
    const back = other?.wall.edges[answer].meets;
    if (!other || back?.kind !== "corner") return [];
    if (back.wall !== wall.wall.name || back.lap !== "under") return [];
    const [lay] = wall.lays;
    const [otherLay] = other.lays;
    if (!lay || !otherLay) return [];
    return [
      { over: { wall, lay, side }, under: { wall: other, lay: otherLay, side: answer }, edge },
    ];
  });
}
