import type { Nm } from "../../measure/index.js";
import type { OwnStart, Plan, UpStart } from "../../model/index.js";
import { FAULT, judgePiece, tileLeftOf } from "../judge.js";
import { latticeOf } from "../lattice.js";
import { layPieces } from "../pieces.js";
import type { SolvedLay, SolvedWall } from "../solved.js";
import { type Field, fieldOf } from "./field.js";
import { sayAcross, sayUp } from "./named-starts.js";
import { criticalAcross, criticalUp } from "./origins.js";
import { criticalAcrossAt, criticalUpAt } from "./sloped-origins.js";

/** A start that leaves no sliver in its direction. */
export type CleanStart =
  | { readonly direction: "across"; readonly start: OwnStart }
  | { readonly direction: "up"; readonly start: UpStart };

/** The most pieces that are laid in search of one. */
const MOST_LAID = 2_000_000;

/**
 * The start nearest to the one a lay has at which no piece is a sliver in that direction, the
 * other direction kept; null when there is none. Looks at the critical starts alone: where a sliver
 * comes or goes, one of them is.
 */
export function nearestClean(
  plan: Plan,
  { wall }: SolvedWall,
  solved: SolvedLay,
  direction: "across" | "up",
): CleanStart | null {
  const field = fieldOf(plan, wall, solved.lay, solved.joint, solved.region);
  const { x, y } = solved.lattice;
  const across = direction === "across";
  const from = across ? x : y;
  const { module } = across ? field.across : field.up;
  const starts = across
    ? [...criticalAcross(field), ...criticalAcrossAt(field, y)]
    : [...criticalUp(field), ...criticalUpAt(field, x)];
  const near = starts.sort((a, b) => apart(a, from, module) - apart(b, from, module));
  let laid = 0;
  for (const start of new Set(near)) {
    laid += solved.pieces.count;
    if (laid > MOST_LAID) return null;
    const at = across ? { x: start, y } : { x, y: start };
    if (!isClean(field, at.x, at.y, direction)) continue;
    if (across) return { direction: "across", start: sayAcross(field, start).start };
    return { direction: "up", start: sayUp(field, start).start };
  }
  return null;
}

/** How far apart two starts are, whole modules left out. */
function apart(a: Nm, b: Nm, module: Nm): Nm {
  const off = (((a - b) % module) + module) % module;
  return Math.min(off, module - off);
}

function isClean(field: Field, x: Nm, y: Nm, direction: "across" | "up"): boolean {
  const { lay, joint } = field.ground;
  const { lattice, pieces } = layPieces(field.region, latticeOf(lay, joint, x, y));
  const sliver = direction === "across" ? FAULT.widthSliver : FAULT.heightSliver;
  for (let i = 0; i < pieces.count; i++) {
    const [left, bottom, right, top] = pieces.bounds.subarray(4 * i, 4 * i + 4);
    const tileLeft = tileLeftOf(lattice, pieces.course[i]!, left!);
    if (judgePiece(field.judge, left!, bottom!, right!, top!, tileLeft) & sliver) return false;
  }
  return true;
}
