export type {
  Alignment,
  Change,
  ComparedPlan,
  Comparison,
  CourseShift,
  CutPiece,
  Fact,
  FindingChange,
  MovedPieces,
  Pair,
  PartChange,
  PieceChanges,
  Quantity,
  RecutPieces,
  SeveralPieces,
  Shift,
  WallComparison,
  WallReading,
} from "./comparison.js";
export type { WallSides } from "./side-by-side.js";
export type { Section } from "./summary.js";
export { comparisonJson } from "./comparison-json.js";
export { comparisonMarkdown, comparisonText, markdown } from "./comparison-text.js";
export { compare } from "./compare.js";
export { overlayOf } from "./overlay.js";
export { sideBySide } from "./side-by-side.js";
export { headline, summarise, TEXT_ONLY } from "./summary.js";
export { wallHeadline } from "./wall-headline.js";
export {
  isEmpty,
  needsMoreTiles,
  newFindings,
  setCoursesAgainst,
  totalsOf,
  wallChanged,
} from "./totals.js";
