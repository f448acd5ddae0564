import {
  cutOf,
  pieceId,
  pieceShape,
  visibleShapes,
  type SolvedPlan,
  type SolvedWall,
} from "../../src/solver/index.js";

/** Everything that a layout is, as plain data to compare; nothing of names or places in the text. */
export function layoutData({ walls }: SolvedPlan): unknown[] {
  return walls.map(wallData);
}

export function wallData({ lays, trims, refused, region }: SolvedWall): unknown {
  return {
    refused,
    takeaways: region.takeaways.map(({ box }) => box),
    lays: lays.map(({ joint, lattice, courses, pieces, below }) => ({
      joint,
      lattice,
      courses,
      pieces: Array.from({ length: pieces.count }, (_, i) => ({
        id: pieceId({ pieces, below, idPrefix: "" }, i),
        cut: cutOf(pieces, i),
        shape: pieceShape(pieces, i),
        seen: visibleShapes(pieces, i),
      })),
    })),
    trims: trims.map(({ side, pieces, joints }) => ({ side, pieces, joints })),
  };
}
