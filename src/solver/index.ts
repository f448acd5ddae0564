export type { Box } from "./box.js";
export type { Chain } from "./chain.js";
export type { Extent } from "./extent.js";
export type { Judge } from "./judge.js";
export type { CleanStart } from "./choose/index.js";
export type { EndCuts, LaidOption, WallOptions } from "./options.js";
export type { Cut, Numbering, PieceTable, Visible } from "./piece-table.js";
export type { Reason, RoomLayout, RoomOption, WishOutcome } from "./room-options.js";
export type { Measured } from "./room/index.js";
export type { Ring, Shape } from "./shape.js";
export type {
  Choice,
  Course,
  Lattice,
  LayPatch,
  Option,
  Region,
  RoomChoice,
  Unsettled,
  RoundHole,
  Score,
  SetStand,
  SolvedInside,
  SolvedLay,
  SolvedPlan,
  SolvedWall,
  Takeaway,
  TrimPiece,
  TrimRun,
} from "./solved.js";
export type {
  MissedJoint,
  SoftJoints,
  SoftMiss,
  SoftName,
  SoftPart,
  SoftRun,
} from "./soft/soft-run.js";
export type { HoleFits, Place } from "./whole-tiles/hole-fits.js";
export type { JointsMet } from "./whole-tiles/joints-met.js";
export type { OpeningFit, OpeningFits, WholeSize } from "./whole-tiles/opening-fits.js";
export type { RestHeights } from "./whole-tiles/rest-heights.js";
export type { StopHeights } from "./whole-tiles/stop-heights.js";
export { encloses, grown, overlaps } from "./box.js";
export {
  highestOver,
  isStraight,
  lowestUnder,
  rangeBetween,
  valueAfter,
  valueAt,
} from "./chain.js";
export { sideDrawnIn } from "./draw-in.js";
export { visibleExtent } from "./extent.js";
export {
  courseBottom,
  courseShift,
  firstPast,
  lastBefore,
  moduleAcross,
  moduleUp,
} from "./lattice.js";
export { goesStraightOn } from "./lay-order.js";
export { judgedRegion } from "./judged-region.js";
export { FAULT, judgeOf, judgePiece, tileLeftOf } from "./judge.js";
export {
  countingLay,
  CUTS,
  cutOf,
  doublePieceArea,
  pieceBounds,
  pieceId,
  pieceShape,
  visibleBounds,
  visibleShapes,
} from "./piece-table.js";
export { tidyRing } from "./clip/ring.js";
export { subtract } from "./clip/subtract.js";
export { cutTile } from "./cut-tile.js";
export { isInside, surfacesOf } from "./insides/surfaces-of.js";
export { layPieces } from "./pieces.js";
export { isTold, meetingLays } from "./corner-lays.js";
export { restBehind, restOf } from "./carry-start.js";
export type { SettledStart } from "./start.js";
export {
  bareSide,
  buildOf,
  cornerGap,
  frameInner,
  frameOuter,
  grownStep,
  openingBox,
  reaching,
  regionOf,
  riserMoves,
  stepInset,
} from "./region.js";
export { headJointNear } from "./soft/head-joint.js";
export { softBox, softJoints, softLength } from "./soft/soft-joints.js";
export { isSetCourse } from "./set-stand.js";
export { doubleRegionArea } from "./region-area.js";
export { boundsOf, doubleArea, doubleShapeArea, ringOf } from "./shape.js";
export { MEASURES, nearestClean } from "./choose/index.js";
export { optionsOf, startedLays } from "./options.js";
export { MOST_PIECES } from "./refusals.js";
export { roomOptions, wishOutcomes, worseIn } from "./room-options.js";
export { measureRoom } from "./room/index.js";
export { solve } from "./solve.js";
export { holeFits } from "./whole-tiles/hole-fits.js";
export { layRound, topLay } from "./whole-tiles/lay-round.js";
export { offJoint } from "./whole-tiles/joints-met.js";
export { openingFits } from "./whole-tiles/opening-fits.js";
export { restHeights } from "./whole-tiles/rest-heights.js";
export { stopHeights } from "./whole-tiles/stop-heights.js";
export { acrossOrigin, clearRuns, doubledCentre, upOrigin } from "./start.js";
