export type { Box } from "./box.js";
export type { Chain } from "./chain.js";
export type { Extent } from "./extent.js";
export type { Judge } from "./judge.js";
export type { CleanStart } from "./choose/index.js";
export type { Cut, PieceTable, Visible } from "./piece-table.js";
export type { Ring, Shape } from "./shape.js";
export type {
  Choice,
  Course,
  Lattice,
  Option,
  Region,
  RoundHole,
  Score,
  SolvedLay,
  SolvedPlan,
  SolvedWall,
  Takeaway,
  TrimPiece,
  TrimRun,
} from "./solved.js";
export { grown, overlaps } from "./box.js";
export { isStraight, rangeBetween, valueAt } from "./chain.js";
export { visibleExtent } from "./extent.js";
export {
  courseBottom,
  courseShift,
  firstPast,
  lastBefore,
  moduleAcross,
  moduleUp,
} from "./lattice.js";
export { FAULT, judgeOf, judgePiece, tileLeftOf } from "./judge.js";
export {
  CUTS,
  cutOf,
  doublePieceArea,
  pieceBounds,
  pieceId,
  pieceShape,
  visibleBounds,
  visibleShapes,
} from "./piece-table.js";
export { layPieces } from "./pieces.js";
export { bareSide, buildOf, frameInner, frameOuter, openingBox, regionOf } from "./region.js";
export { doubleRegionArea } from "./region-area.js";
export { boundsOf, doubleArea, doubleShapeArea, ringOf } from "./shape.js";
export { MEASURES, nearestClean } from "./choose/index.js";
export { MOST_PIECES, solve } from "./solve.js";
export { acrossOrigin, clearRuns, doubledCentre, upOrigin } from "./start.js";
