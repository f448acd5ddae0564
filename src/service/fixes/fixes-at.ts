import type { SourceRange } from "../../model/index.js";
import type { DocumentState } from "../document-state.js";
import { allowFinding } from "./allow-finding.js";
import { answerCorner } from "./answer-corner.js";
import { calmBond } from "./calm-bond.js";
import { carryBond } from "./carry-bond.js";
import { centreOnOpening } from "./centre-on-opening.js";
import { clearHole } from "./clear-hole.js";
import { closeBlock } from "./close-block.js";
import { coverHole } from "./cover-hole.js";
import { didYouMean } from "./did-you-mean.js";
import { dropAllow } from "./drop-allow.js";
import type { Fix, Fixer } from "./fix.js";
import { keepInCourse } from "./keep-in-course.js";
import { letFall } from "./let-fall.js";
import { meetBands } from "./meet-bands.js";
import { meetCourses } from "./meet-courses.js";
import { missingStatement } from "./missing-statement.js";
import { moveHole } from "./move-hole.js";
import { moveOpening } from "./move-opening.js";
import { moveStart } from "./move-start.js";
import { offBand } from "./off-band.js";
import { ontoJoints, windowOntoJoints } from "./onto-joints.js";
import { plainCharacter } from "./plain-character.js";
import { saidOnce } from "./said-once.js";
import { setAsLaid } from "./set-as-laid.js";
import { softJoint } from "./soft-joint.js";
import { softenJoints } from "./soften-joints.js";
import { soundOffset } from "./sound-offset.js";
import { swapTrim } from "./swap-trim.js";
import { takeOption } from "./take-option.js";
import { takeRoomOption } from "./take-room-option.js";
import { trimEdge } from "./trim-edge.js";
import { wholeTiles } from "./whole-tiles.js";
import { widenJoint } from "./widen-joint.js";
import { widenSoftJoint } from "./widen-soft-joint.js";
import { writeSetStart } from "./write-set-start.js";
import { writeStart } from "./write-start.js";

/** In the order in which they are offered. A new one is a file and a line here. */
const FIXERS: readonly Fixer[] = [
  didYouMean,
  plainCharacter,
  closeBlock,
  missingStatement,
  writeSetStart,
  answerCorner,
  widenJoint,
  calmBond,
  soundOffset,
  trimEdge,
  swapTrim,
  softJoint,
  widenSoftJoint,
  softenJoints,
  saidOnce,
  setAsLaid,
  moveStart,
  meetCourses,
  carryBond,
  keepInCourse,
  centreOnOpening,
  ontoJoints,
  letFall,
  meetBands,
  moveHole,
  moveOpening,
  offBand,
  coverHole,
  clearHole,
  dropAllow,
  allowFinding,
];

/** At one place no more diagnostics than this are mended. */
const MOST_MENDED = 50;

/** The mends of what is wrong in a stretch of a document. */
export function fixesAt(state: DocumentState, range: SourceRange): Fix[] {
  const { file } = state.document;
  const here = state.outcome.diagnostics
    .filter((diagnostic) => diagnostic.file === file && touches(diagnostic.range, range))
    .slice(0, MOST_MENDED);
  const mends = FIXERS.flatMap((fixer) =>
    here
      // Nothing mends what is set; it can only be accepted.
      .filter(({ set }) => set === undefined || fixer === allowFinding)
      .flatMap((diagnostic) => fixer(state, diagnostic)),
  );
  return withoutTwins([
    ...mends,
    ...writeStart(state, range),
    ...takeOption(state, range),
    ...takeRoomOption(state, range),
    ...windowOntoJoints(state, range),
    ...wholeTiles(state, range),
  ]);
}

/** Several findings of one rule in one block have one mend between them. */
function withoutTwins(fixes: readonly Fix[]): Fix[] {
  const seen = new Set<string>();
  return fixes.filter(({ title, edits }) => {
    const key = JSON.stringify([title, edits]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function touches(a: SourceRange, b: SourceRange): boolean {
  return !isBefore(a.end, b.start) && !isBefore(b.end, a.start);
}

function isBefore(a: SourceRange["start"], b: SourceRange["start"]): boolean {
  return a.line < b.line || (a.line === b.line && a.character < b.character);
}
