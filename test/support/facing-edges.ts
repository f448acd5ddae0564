import type { Side } from "../../src/model/index.js";
import { pieceShape, type SolvedLay } from "../../src/solver/index.js";

interface Edge {
  readonly piece: number;
  readonly side: Side;
  /** The line it lies on, and from where to where. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

const ACROSS: Readonly<Record<Side, Side>> = {
  left: "right",
  right: "left",
  bottom: "top",
  top: "bottom",
};

/** Every straight edge of a piece that has another's just a joint away, found by looking at all pairs. */
export function* facingEdges({ pieces, lattice }: SolvedLay): Generator<readonly [number, Side]> {
  const edges: Edge[] = [];
  for (let i = 0; i < pieces.count; i++) {
    edges.push(...edgesOf(i, pieceShape(pieces, i).outline));
  }
  const byLine = new Map<string, Edge[]>();
  for (const edge of edges) {
    const line = byLine.get(lineOf(edge));
    if (line) line.push(edge);
    else byLine.set(lineOf(edge), [edge]);
  }
  for (const edge of edges) {
    const away = edge.side === "right" || edge.side === "top" ? lattice.joint : -lattice.joint;
    const facing = byLine.get(`${ACROSS[edge.side]} ${edge.at + away}`) ?? [];
    const meets = facing.some((other) => other.from < edge.to && edge.from < other.to);
    if (meets) yield [edge.piece, edge.side];
  }
}

const lineOf = ({ side, at }: Edge) => `${side} ${at}`;

/** An outline runs anticlockwise: along the bottom rightwards, up the right side. */
function edgesOf(piece: number, outline: readonly number[]): Edge[] {
  const edges: Edge[] = [];
  for (let k = 0; k < outline.length; k += 2) {
    const next = (k + 2) % outline.length;
    const [ax, ay, bx, by] = [outline[k]!, outline[k + 1]!, outline[next]!, outline[next + 1]!];
    if (ay === by) {
      const side = bx > ax ? "bottom" : "top";
      edges.push({ piece, side, at: ay, from: Math.min(ax, bx), to: Math.max(ax, bx) });
    } else if (ax === bx) {
      const side = by > ay ? "right" : "left";
      edges.push({ piece, side, at: ax, from: Math.min(ay, by), to: Math.max(ay, by) });
    }
  }
  return edges;
}
