import { divideRounded, type Nm } from "../../measure/index.js";

/** A stretch along a run of trim, from its beginning. */
export interface Stretch {
  readonly from: Nm;
  readonly to: Nm;
}

/**
 * Divides a run into lengths of trim with joints between them, centred: on a piece or on a joint,
 * whichever leaves the longer end pieces (common practice).
 */
export function splitRun(length: Nm, piece: Nm, joint: Nm): readonly Stretch[] {
  if (length <= 0) return [];
  if (length <= piece) return [{ from: 0, to: length }];
  const onPiece = divideRounded(length - piece, 2);
  const onJoint = divideRounded(length - joint, 2) + joint;
  const best = [onPiece, onJoint]
    .map((start) => stretchesFrom(start, length, piece, joint))
    .sort((a, b) => shortestEnd(b, length) - shortestEnd(a, length))[0]!;
  return best;
}

function stretchesFrom(start: Nm, length: Nm, piece: Nm, joint: Nm): Stretch[] {
  const module = piece + joint;
  const stretches: Stretch[] = [];
  const first = start - Math.ceil(start / module) * module;
  for (let from = first; from < length; from += module) {
    const stretch = { from: Math.max(from, 0), to: Math.min(from + piece, length) };
    if (stretch.from < stretch.to) stretches.push(stretch);
  }
  return stretches;
}

/** The shorter end piece; 0 where a joint, not a piece, would close the run. */
function shortestEnd(stretches: readonly Stretch[], length: Nm): Nm {
  const [first, last] = [stretches[0], stretches.at(-1)];
  // A run shorter than one joint may come to lie in it.
  if (!first || !last) return 0;
  if (first.from > 0 || last.to < length) return 0;
  return Math.min(first.to - first.from, last.to - last.from);
}
