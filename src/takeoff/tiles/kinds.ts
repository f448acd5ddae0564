import { type Demand, type Pose, posesOf } from "./demand.js";
import type { Face } from "./face.js";

/** Pieces of one size that need the same edges: they lie alike in a tile, and count alike in a bound. */
export interface Kind {
  /** One of them. */
  readonly demand: Demand;
  readonly count: number;
  /** Every way to cut one from a whole tile, the unturned first. */
  readonly poses: readonly Pose[];
}

/** A piece that wants a rectangle out of some tile, with its kind. */
export interface Wanted {
  readonly demand: Demand;
  readonly kind: Kind;
}

/** All that is to be cut from a face. */
export interface Wants {
  readonly pieces: readonly Wanted[];
  /** In the order of their first pieces. */
  readonly kinds: readonly Kind[];
}

/** The pieces with their kinds, so that what is the same for all of a kind is worked out once. */
export function sortOut(face: Face, demands: readonly Demand[]): Wants {
  const kinds = new Map<string, Kind & { count: number }>();
  const pieces: Wanted[] = [];
  for (const demand of demands) {
    const key = `${demand.width}x${demand.height}/${demand.needs}`;
    let kind = kinds.get(key);
    if (!kind) {
      kind = { demand, count: 0, poses: posesOf(demand, face) };
      kinds.set(key, kind);
    }
    kind.count++;
    pieces.push({ demand, kind });
  }
  return { pieces, kinds: [...kinds.values()] };
}
