import { twinsOf } from "../model/index.js";
import { surfacesOf } from "./insides/surfaces-of.js";
import { moduleUp } from "./lattice.js";
import type { LaidPieces } from "./pieces.js";
import { isSameRegion } from "./same-region.js";
import type { Lattice, Region, SolvedLay, SolvedWall, TrimRun } from "./solved.js";

/** A wall as far as it is laid when its trim is to be. */
export type TiledWall = Pick<SolvedWall, "wall" | "region" | "lays">;

/**
 * What another plan came to, most often the same one before a change: where a wall comes to the same again, its
 * pieces and its trim are taken over instead of being laid anew.
 */
export class EarlierLayout {
  static readonly NONE = new EarlierLayout([]);

  readonly #walls: readonly SolvedWall[];

  constructor(walls: readonly SolvedWall[]) {
    this.#walls = walls;
  }

  /** The pieces of such a region on such a lattice; null where none were laid. */
  piecesOf(region: Region, lattice: Lattice): LaidPieces | null {
    for (const { lays } of surfacesOf(this.#walls)) {
      for (const lay of lays) {
        if (!isSameLattice(lay.lattice, lattice) || !isSameRegion(lay.region, region)) continue;
        return { lattice: lay.lattice, courses: lay.courses, pieces: lay.pieces };
      }
    }
    return null;
  }

  /** The trim of a wall that says what it said, and of which all tile was taken over; else null. */
  trimsOf({ wall, region, lays }: TiledWall): readonly TrimRun[] | null {
    const earlier = this.#walls.find((each) => each.wall.name === wall.name);
    if (!earlier || !isSameTile(earlier.lays, lays)) return null;
    if (!isSameRegion(earlier.region, region)) return null;
    const twins = twinsOf(earlier.wall, wall);
    return twins && earlier.trims.map((run) => ({ ...run, along: twinAlong(run, twins) }));
  }
}

/** `a` is numbered from its course 1; `b` may have any course's bottom for its own. */
function isSameLattice(a: Lattice, b: Lattice): boolean {
  return (
    a.x === b.x &&
    a.face.across === b.face.across &&
    a.face.up === b.face.up &&
    a.joint === b.joint &&
    a.bed === b.bed &&
    a.p === b.p &&
    a.q === b.q &&
    a.after === b.after &&
    (a.y - b.y) % moduleUp(a) === 0
  );
}

function isSameTile(earlier: readonly SolvedLay[], lays: readonly SolvedLay[]): boolean {
  return (
    earlier.length === lays.length &&
    earlier.every(({ pieces, joint }, i) => pieces === lays[i]!.pieces && joint === lays[i]!.joint)
  );
}

function twinAlong({ along }: TrimRun, twins: ReadonlyMap<object, object>): TrimRun["along"] {
  if ("opening" in along) return { opening: twins.get(along.opening) as typeof along.opening };
  return { edge: twins.get(along.edge) as typeof along.edge };
}
