import type { Nm } from "../../measure/index.js";

/** A stretch along a side. */
export interface Stretch {
  readonly from: Nm;
  readonly to: Nm;
}

/** What of a stretch across the wall lies clear of boxes, from left to right. */
export function clearStretches(
  { from, to }: Stretch,
  boxes: readonly { readonly left: Nm; readonly right: Nm }[],
): Stretch[] {
  const clear: Stretch[] = [];
  let at = from;
  for (const { left, right } of [...boxes].sort((a, b) => a.left - b.left)) {
    if (left > at && at < to) clear.push({ from: at, to: Math.min(left, to) });
    at = Math.max(at, right);
  }
  return at < to ? [...clear, { from: at, to }] : clear;
}
