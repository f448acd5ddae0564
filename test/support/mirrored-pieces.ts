import type { Nm } from "../../src/measure/index.js";
import { boundsOf, cutOf, pieceShape, type Ring, type SolvedWall } from "../../src/solver/index.js";
import { fromLowest, turnedRound } from "./ring.js";
import type { Sketch } from "./sketch.js";

/** A piece as a mirror leaves it: by its shape alone. */
export interface MirrorPiece {
  readonly course: number;
  readonly cut: string;
  /** The outline first. */
  readonly rings: readonly Ring[];
}

/** The pieces of a wall from left to right, turned over a width where one is given. */
export function piecesOf({ lays }: SolvedWall, width: Nm | null): MirrorPiece[] {
  return lays
    .flatMap(({ pieces }) =>
      Array.from({ length: pieces.count }, (_, i): MirrorPiece => {
        const { outline, holes } = pieceShape(pieces, i);
        const rings = [outline, ...holes].map((ring) => turned(ring, width));
        return { course: pieces.course[i]!, cut: cutOf(pieces, i), rings };
      }),
    )
    .sort((a, b) => a.course - b.course || compareBounds(a, b));
}

/** Corner for corner; a crossing on exactly half a nanometre may be rounded to either side. */
export function areMirrored(
  mirror: readonly MirrorPiece[],
  pieces: readonly MirrorPiece[],
): boolean {
  return (
    mirror.length === pieces.length &&
    pieces.every((piece, i) => {
      const { course, cut, rings } = mirror[i]!;
      const isScribed = piece.cut === "scribe" || piece.cut === "hole";
      return (
        course === piece.course &&
        cut === piece.cut &&
        rings.length === piece.rings.length &&
        rings.every((ring, k) => areAlike(ring, piece.rings[k]!, isScribed ? 1 : 0))
      );
    })
  );
}

/**
 * A sketch whose courses shift by whole nanometres. A third of a module is rounded alike from either
 * side; only a fraction of exactly a half is not.
 */
export function evenSketch(sketch: Sketch): Sketch {
  const even = (lay: Sketch["walls"][number]["lay"], across: Nm): typeof lay => {
    const { bond, joint } = lay;
    const isEven = bond === "stack" || (across + (joint as Nm)) % bond.q === 0;
    return isEven ? lay : { ...lay, bond: { p: 1, q: 2 } };
  };
  return {
    ...sketch,
    walls: sketch.walls.map((wall) => ({
      ...wall,
      lay: even(wall.lay, sketch.tile.across),
      ...(wall.second && {
        second: { ...wall.second, lay: even(wall.second.lay, sketch.accent!.across) },
      }),
    })),
  };
}

function areAlike(ring: Ring, other: Ring, within: Nm): boolean {
  return (
    ring.length === other.length && ring.every((value, i) => Math.abs(value - other[i]!) <= within)
  );
}

function compareBounds(a: MirrorPiece, b: MirrorPiece): number {
  const [p, q] = [boundsOf(a.rings[0]!), boundsOf(b.rings[0]!)];
  return p.left - q.left || p.bottom - q.bottom || p.right - q.right || p.top - q.top;
}

function turned(ring: Ring, width: Nm | null): Ring {
  if (width === null) return ring;
  const over = ring.map((value, i) => (i % 2 === 0 ? width - value : value));
  return fromLowest(turnedRound(over));
}
