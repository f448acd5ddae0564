import ClipperLib from "clipper-lib";
import { type Box, type Ring, type Shape } from "../../src/solver/index.js";
import { cornersOf, directed, fromLowest } from "./ring.js";

const { Clipper, ClipType, PolyFillType, PolyTree, PolyType } = ClipperLib;
type PolyNode = InstanceType<typeof PolyTree>;

/**
 * What is left of `subject` when all of `taken` is taken away, by clipper-lib in whole nanometres:
 * its connected parts, from the lowest up, rings as the solver writes them. One sweep over the given
 * corners, so each crossing is rounded once. What is taken runs anticlockwise and may overlap.
 */
export function subtract(subject: readonly Ring[], taken: readonly Ring[]): Shape[] {
  return clip(ClipType.ctDifference, subject, taken);
}

/** What `subject` and `other` share. */
export function intersect(subject: readonly Ring[], other: readonly Ring[]): Shape[] {
  return clip(ClipType.ctIntersection, subject, other);
}

/** A shape's rings, outline and holes, for clipping. */
export function ringsOf(shape: Shape): Ring[] {
  return [shape.outline, ...shape.holes];
}

export function boxRing(box: Box): Ring {
  const { left, bottom, right, top } = box;
  return [left, bottom, right, bottom, right, top, left, top];
}

function clip(kind: 0 | 2, subject: readonly Ring[], other: readonly Ring[]): Shape[] {
  const clipper = new Clipper();
  clipper.AddPaths(subject.map(toPath), PolyType.ptSubject, true);
  if (other.length > 0) clipper.AddPaths(other.map(toPath), PolyType.ptClip, true);
  const tree = new PolyTree();
  clipper.Execute(kind, tree, PolyFillType.pftEvenOdd, PolyFillType.pftNonZero);
  const shapes: Shape[] = [];
  collect(tree, shapes);
  return shapes.sort((a, b) => a.outline[1]! - b.outline[1]! || a.outline[0]! - b.outline[0]!);
}

/** A tree of contours: outlines, their holes, the islands in those. */
function collect(parent: PolyNode, shapes: Shape[]): void {
  for (const node of parent.Childs()) {
    const outline = fromLowest(directed(toRing(node), 1));
    const holes = node.Childs().map((hole) => fromLowest(directed(toRing(hole), -1)));
    if (outline.length > 0) shapes.push({ outline, holes });
    for (const hole of node.Childs()) collect(hole, shapes);
  }
}

function toPath(ring: Ring): { X: number; Y: number }[] {
  return cornersOf(ring).map(([X, Y]) => ({ X, Y }));
}

function toRing(node: PolyNode): Ring {
  return node.Contour().flatMap(({ X, Y }) => [X, Y]);
}
