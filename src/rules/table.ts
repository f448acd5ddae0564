import { bandCutThrough } from "./band-cut-through.js";
import { bandHeight } from "./band-height.js";
import { balanceUnequalEnds } from "./balance-unequal-ends.js";
import { bondOffsetOverThird } from "./bond-offset-over-third.js";
import { cornerBondBroken } from "./corner-bond-broken.js";
import { cornerCoursesMiss } from "./corner-courses-miss.js";
import { cutBeyondSaw } from "./cut-beyond-saw.js";
import { cutSliver } from "./cut-sliver.js";
import { cutTaper } from "./cut-taper.js";
import { cutThinLeg } from "./cut-thin-leg.js";
import { cutUnderHalf } from "./cut-under-half.js";
import { edgeBare } from "./edge-bare.js";
import { edgeRake } from "./edge-rake.js";
import { holeNearEdge } from "./hole-near-edge.js";
import { holePlateOver } from "./hole-plate-over.js";
import { holePlateRim } from "./hole-plate-rim.js";
import { holePlateSmall } from "./hole-plate-small.js";
import { holeSoftJoint } from "./hole-soft-joint.js";
import { jointLongTile } from "./joint-long-tile.js";
import { jointStacked } from "./joint-stacked.js";
import { jointTooNarrow } from "./joint-too-narrow.js";
import { jointTrimClash } from "./joint-trim-clash.js";
import { lippageExpected } from "./lippage-expected.js";
import { movementMissing } from "./movement-missing.js";
import { movementNoJoint } from "./movement-no-joint.js";
import { movementNarrow } from "./movement-narrow.js";
import { movementTooFar } from "./movement-too-far.js";
import { openingBackOffJoint } from "./opening-back-off-joint.js";
import { openingBackSlope } from "./opening-back-slope.js";
import { openingFlatSill } from "./opening-flat-sill.js";
import { openingOffCentre } from "./opening-off-centre.js";
import { openingOffJoint } from "./opening-off-joint.js";
import { openingOverStep } from "./opening-over-step.js";
import type { Rule, RuleEntry } from "./rule.js";
import { setNoCourse } from "./set-no-course.js";
import { setOutOfLevel } from "./set-out-of-level.js";
import { setTopOff } from "./set-top-off.js";
import { tileNominal } from "./tile-nominal.js";
import { trimPastEnd } from "./trim-past-end.js";
import { trimTooThin } from "./trim-too-thin.js";
import { wallTooLarge } from "./wall-too-large.js";
import { wallUnsettled } from "./wall-unsettled.js";
import { wishNotMet } from "./wish-not-met.js";

/** The rules of the trade. A new rule is a file and a line here. */
export const TRADE_RULES: readonly Rule[] = [
  cutSliver,
  cutUnderHalf,
  cutThinLeg,
  cutTaper,
  cutBeyondSaw,
  jointTooNarrow,
  jointLongTile,
  jointStacked,
  jointTrimClash,
  bondOffsetOverThird,
  lippageExpected,
  movementMissing,
  movementNarrow,
  movementNoJoint,
  movementTooFar,
  cornerCoursesMiss,
  cornerBondBroken,
  bandHeight,
  bandCutThrough,
  balanceUnequalEnds,
  holeNearEdge,
  holePlateSmall,
  holePlateOver,
  holePlateRim,
  holeSoftJoint,
  edgeBare,
  edgeRake,
  trimTooThin,
  trimPastEnd,
  openingOffJoint,
  openingBackOffJoint,
  openingOffCentre,
  openingOverStep,
  openingFlatSill,
  openingBackSlope,
  setTopOff,
  setOutOfLevel,
  setNoCourse,
  tileNominal,
  wallTooLarge,
  wallUnsettled,
  wishNotMet,
];

const LANGUAGE = "the plan language";

/** What is told of an `allow` whose code no rule has. */
export const ALLOW_UNKNOWN: RuleEntry = {
  code: "allow/unknown",
  severity: "warning",
  title: "an allow names no rule",
  source: LANGUAGE,
  limit: null,
};

/** What is told of an `allow` that silences nothing. */
export const ALLOW_UNUSED: RuleEntry = {
  code: "allow/unused",
  severity: "information",
  title: "an allow silences nothing",
  source: LANGUAGE,
  limit: null,
};

/** Every rule, for help, exports and the reference. */
export const RULES: readonly RuleEntry[] = [...TRADE_RULES, ALLOW_UNKNOWN, ALLOW_UNUSED];
