export type { Corner, CornerWall } from "./corner.js";
export type { BondWay, CornerCourse } from "./corner-bond.js";
export type { Flatness } from "./trade.js";
export type { Finding, Rule, RuleEntry } from "./rule.js";
export type { Stretch, StretchEnd } from "./soft-stretches.js";
export { softStretches, stretchLength } from "./soft-stretches.js";
export type { Softening } from "./joints-to-soften.js";
export { jointsToSoften } from "./joints-to-soften.js";
export { softPlace } from "./soft-words.js";
export { farStretches, mostApart } from "./movement-too-far.js";
export { courseName, setName, setWords } from "./set-words.js";
export { check } from "./check.js";
export { fallRatio, leastFall } from "./fall.js";
export type { BandPair } from "./band.js";
export type { PlateOver } from "./plate-overs.js";
export { bandOff, bandPairs, bandsOf } from "./band.js";
export { isOffsetTooWide } from "./bond-offset-over-third.js";
export { isOffsetTooSmall } from "./joint-stacked.js";
export { clearHeights, edgesInBand } from "./band-cut-through.js";
export { clearOfEdges, clearOfSoftJoints, rimsOnTile } from "./clear-hole.js";
export { leastLap, twiceLap } from "./hole-plate-small.js";
export { expectedLippage, mostLippage } from "./lippage-expected.js";
export { mostProud } from "./trim-too-thin.js";
export { stepsUnder } from "./opening-over-step.js";
export { overreaches } from "./trim-past-end.js";
export { plateOvers } from "./plate-overs.js";
export { cornersOver } from "./corner.js";
export { cornerCourses } from "./corner-bond.js";
export { twiceMiss } from "./course-miss.js";
export { RULES } from "./table.js";
export {
  FLATNESS,
  flatnessFor,
  leastJoint,
  leastLongJoint,
  leastMovement,
  LIPPAGE,
  mostWrapOff,
} from "./trade.js";
export { isMet, lossWords, missWords, priceWords, wishWords } from "./wish-words.js";
