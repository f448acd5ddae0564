import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import { type Inside, mayHaveDepth } from "../../model/index.js";
import type { OpeningPart, OpeningStatement } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import { resolveLinings } from "./linings.js";
import type { Parts } from "./parts.js";
import type { WallDraft } from "./wall-draft.js";

/** The depth and the fall that an opening states; null without a depth. `up` is how high it is. */
export function resolveInside(
  { opening: kind, name: opening }: OpeningStatement,
  parts: Parts<OpeningPart>,
  up: Nm | null,
  draft: WallDraft,
): Inside | null {
  const { scope, name: wall } = draft;
  const statement = parts.first("depth");
  const fall = parts.first("fall");
  const lined = parts.first("untiled") ?? parts.all("lining")[0];
  if (lined && kind !== "niche" && kind !== "window") {
    const message = `found how the inside of a ${kind} is laid, wanted it of a niche or a window`;
    scope.report.tell("plan/inside", lined.head, message, { wall });
  } else if (lined && !statement && !parts.isBroken("depth")) {
    const message = "found how an inside is laid without a depth, wanted a `depth` in this block";
    scope.report.tell("plan/inside", lined.head, message, { wall });
  }
  const first = statement ?? fall;
  if (!first) return null;
  if (!mayHaveDepth({ kind })) {
    const message = `found a ${first.kind} of a ${kind}, wanted it of a window, a niche, a bench or a curb`;
    scope.report.tell("plan/inside", first.head, message, { wall });
    return null;
  }
  if (!statement) {
    if (parts.isBroken("depth")) return null;
    const message = "found a fall without a depth, wanted a `depth` in this block";
    scope.report.tell("plan/inside", first.head, message, { wall });
    return null;
  }
  const depth = lengthOf(statement.length, "positive", scope, wall);
  const fallen = fall ? fallOf(fall, kind, up, draft) : null;
  const lays = resolveLinings(parts, opening?.text ?? null, draft);
  const untiled = parts.first("untiled");
  const tiled = (kind === "niche" || kind === "window") && !untiled;
  return depth === null ? null : { depth, fall: fallen, tiled, lays: tiled ? lays : {} };
}

/** Over its depth a sill can't fall by as much as the opening is high: nothing would be left of it. */
function fallOf(
  { length }: Extract<OpeningPart, { readonly kind: "fall" }>,
  kind: OpeningStatement["opening"],
  up: Nm | null,
  { scope, name: wall }: WallDraft,
): Nm | null {
  const fall = lengthOf(length, "any", scope, wall);
  if (fall === null || up === null || Math.abs(fall) < up) return fall;
  const message =
    `found ${formatLength(fall, scope.units)}, wanted less than the ` +
    `${formatLength(up, scope.units)} that the ${kind} is high`;
  scope.report.tell("plan/inside", length, message, { wall });
  return null;
}
