import type { Nm } from "../../measure/index.js";
import type { Face } from "./face.js";
import type { Kind } from "./kinds.js";
import { counted, EFFORT, thresholds } from "./scales.js";

/** One way of the tile, across or up, with the sizes of all kinds' poses in turn, each a kerf larger. */
interface Scale {
  readonly length: Nm;
  readonly sizes: readonly Nm[];
  /** Where what sizes count for changes. */
  readonly leasts: readonly Nm[];
}

/**
 * How many tiles pieces take at least by area, each piece and the tile a kerf wider and higher, since
 * every piece is cut from its neighbour; and by what sizes count for, one way or both ways.
 */
export class AreaBound {
  private readonly across: Scale;
  private readonly up: Scale;

  constructor(
    face: Face,
    private readonly kinds: readonly Kind[],
  ) {
    const poses = kinds.flatMap((kind) => kind.poses);
    const most = Math.floor(Math.sqrt(EFFORT / (poses.length + 1)));
    const scaleOf = (length: Nm, sizes: readonly Nm[]): Scale => ({
      length,
      sizes,
      leasts: thresholds(sizes, length, most),
    });
    const { kerf } = face;
    this.across = scaleOf(
      face.across + kerf,
      poses.map((pose) => pose.width + kerf),
    );
    this.up = scaleOf(
      face.up + kerf,
      poses.map((pose) => pose.height + kerf),
    );
  }

  /**
   * Where what is over half a tile counts for all of it, or as near to that as is weighed: mostly the
   * best of all.
   */
  coarsest(): number {
    const [widths] = countings(this.across, this.across.leasts.slice(-1));
    const [heights] = countings(this.up, this.up.leasts.slice(-1));
    return this.tilesFor(widths!, heights!);
  }

  /** The best of all; `known` is a bound already found, and no more than `enough` is looked for. */
  best(known: number, enough: number): number {
    const { across, up } = this;
    const tile = across.length * up.length;
    const heights = countings(up, up.leasts);
    let bound = known;
    for (const least of across.leasts) {
      const [widths] = countings(across, [least]);
      for (const each of heights) {
        if (bound >= enough) return bound;
        // Worked out exactly only where the quick sum promises more.
        if (Math.ceil(quickSum(this.kinds, widths!, each) / tile) <= bound) continue;
        bound = Math.max(bound, this.tilesFor(widths!, each));
      }
    }
    return bound;
  }

  private tilesFor(widths: readonly Nm[], heights: readonly Nm[]): number {
    const tile = BigInt(this.across.length) * BigInt(this.up.length);
    return Number((exactSum(this.kinds, widths, heights) + tile - 1n) / tile);
  }
}

/** What the sizes count for at each of these values of `least`. */
function countings({ sizes, length }: Scale, leasts: readonly Nm[]): readonly (readonly Nm[])[] {
  return leasts.map((least) => sizes.map((size) => counted(size, length, least)));
}

/** What all pieces count for, each in the pose that counts least; sizes are those of all kinds' poses in turn. */
function quickSum(kinds: readonly Kind[], widths: readonly Nm[], heights: readonly Nm[]): number {
  let sum = 0;
  let first = 0;
  for (const { count, poses } of kinds) {
    let least = Infinity;
    const end = first + poses.length;
    for (let k = first; k < end; k++) least = Math.min(least, widths[k]! * heights[k]!);
    sum += count * least;
    first = end;
  }
  return sum;
}

function exactSum(kinds: readonly Kind[], widths: readonly Nm[], heights: readonly Nm[]): bigint {
  let first = 0;
  return kinds.reduce((sum, { count, poses }) => {
    const areas = poses.map((_, k) => BigInt(widths[first + k]!) * BigInt(heights[first + k]!));
    first += poses.length;
    return sum + BigInt(count) * areas.reduce((a, b) => (b < a ? b : a));
  }, 0n);
}
