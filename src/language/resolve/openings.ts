import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import {
  type Edge,
  type Frame,
  isSolid,
  type Opening,
  type OpeningKind,
  type Origin,
  type Side,
  type Wall,
} from "../../model/index.js";
import type { OpeningPart, OpeningStatement } from "../syntax.js";
import { resolveAllows } from "./allows.js";
import { findTrim } from "./edges.js";
import { resolveInside } from "./insides.js";
import { lengthOf } from "./lengths.js";
import { Names } from "./names.js";
import { holdsMiddle, isInStep, slopeCuts, stepCuts } from "./outline.js";
import { Parts } from "./parts.js";
import { type Ranged, rangeOf } from "./range.js";
import { placeOf } from "./report.js";
import type { WallDraft } from "./wall-draft.js";
import { withinCount } from "./within-count.js";

/** The openings of a wall. */
export interface ResolvedOpenings {
  /** Those that lie in the wall and apart from one another. */
  readonly kept: readonly Opening[];
  /** Every name; null for an opening that was left out. */
  readonly names: Names<Opening>;
}

/** One outside its wall or over another is told and left out, so that the rest can be laid. */
export function resolveOpenings(
  draft: WallDraft,
  { edges }: Pick<Wall, "edges">,
): ResolvedOpenings {
  const names = new Names<Opening>("an opening");
  const kept: Opening[] = [];
  for (const [i, statement] of withinCount(
    draft.parts.all("opening"),
    "openings",
    draft,
  ).entries()) {
    const origin = draft.scope.report.origin(statement);
    const name = statement.name ?? { text: `${statement.opening}-${i + 1}`, ...statement.head };
    if (!statement.name) names.loseName();
    const found = resolveOpening(statement, name.text, origin, draft);
    const isIn =
      found !== null &&
      isInWall(found, statement, edges, draft) &&
      isOffSteps(found, statement, draft);
    if (isIn) tellOverSlope(found, statement, draft);
    const fitting = isIn ? apartFrom(found, statement, kept, draft) : null;
    const isFirst = names.declare(name, { value: fitting, origin }, draft.scope.report);
    if (fitting && isFirst) kept.push(fitting);
  }
  return { kept, names };
}

function resolveOpening(
  statement: OpeningStatement,
  name: string,
  origin: Origin,
  draft: WallDraft,
): Opening | null {
  const { scope, name: wall } = draft;
  const parts = new Parts(statement.body, scope.report, wall, ["lining"]);
  const ranged = resolveAt(statement, parts, draft);
  const written = parts.need(
    "size",
    statement,
    "found no `size`, wanted the opening's, such as `size 24 x 36`",
  );
  if (written?.upTo) {
    const message =
      "found a range of sizes, wanted one size: only an opening's place may be left free";
    scope.report.tell("plan/range", written.upTo, message, { wall });
  }
  const across = written && lengthOf(written.first, "positive", scope, wall);
  const up = written && lengthOf(written.second, "positive", scope, wall);
  const movement = parts.first("movement");
  const soft = movement ? lengthOf(movement.length, "not-negative", scope, wall) : null;
  const inset = resolveInset(parts, across ?? null, up ?? null, draft);
  const frame = resolveFrame(statement, parts, inset, draft);
  const inside = resolveInside(statement, parts, up ?? null, draft);
  const allows = resolveAllows(statement.body, scope.report);
  if (!ranged || !across || !up) return null;
  const { opening: kind } = statement;
  const reaches = reachOf(kind, ranged.y !== null);
  const y = ranged.y?.from ?? (reaches === "ceiling" ? draft.size.up - up : 0);
  return {
    kind,
    name,
    reaches,
    at: { x: ranged.x.from, y },
    free: { x: ranged.x.range, y: ranged.y?.range ?? null },
    size: { across, up },
    frame,
    movement: soft,
    inside,
    allows,
    origin,
  };
}

/** A door always stands on the floor; a bench, a curb or a soffit where the plan gives it no height. */
function reachOf(kind: OpeningKind, hasHeight: boolean): Opening["reaches"] {
  if (kind === "door") return "floor";
  if (hasHeight || !isSolid({ kind })) return null;
  return kind === "soffit" ? "ceiling" : "floor";
}

function resolveAt(
  statement: OpeningStatement,
  parts: Parts<OpeningPart>,
  { scope, name: wall }: WallDraft,
): { readonly x: Ranged; readonly y: Ranged | null } | null {
  const at = parts.need(
    "at",
    statement,
    "found no `at`, wanted the opening's lower left corner, such as `at 18, 46`",
  );
  if (!at) return null;
  const isFree = statement.opening === "niche" || statement.opening === "window";
  if (!isFree && (at.xTo ?? at.yTo)) {
    const message = `found a range, wanted a ${statement.opening}'s own place: only a niche or a window may be left free`;
    scope.report.tell("plan/range", (at.xTo ?? at.yTo)!, message, { wall });
  }
  const x = rangeOf(at.x, isFree ? at.xTo : null, "any", scope, wall);
  if (at.y === null && isFree) {
    scope.report.tell(
      "plan/missing",
      at.head,
      "found one length, wanted the height too, such as `at 18, 46`",
      { wall },
    );
    return null;
  }
  if (x === null) return null;
  if (at.y === null) return { x, y: null };
  const y = rangeOf(at.y, isFree ? at.yTo : null, "any", scope, wall);
  return y === null ? null : { x, y };
}

/** An inset from both sides must leave some of the opening. */
function resolveInset(
  parts: Parts<OpeningPart>,
  across: Nm | null,
  up: Nm | null,
  { scope, name: wall }: WallDraft,
): Nm {
  const statement = parts.first("inset");
  if (!statement) return 0;
  const { report, units } = scope;
  if (!parts.first("frame") && !parts.isBroken("frame")) {
    report.tell(
      "plan/inset",
      statement.head,
      "found an inset without a frame, wanted a `frame` in this block",
      { wall },
    );
    return 0;
  }
  const inset = lengthOf(statement.length, "not-negative", scope, wall) ?? 0;
  const least = Math.min(across ?? Infinity, up ?? Infinity);
  if (2 * inset < least) return inset;
  const message = `found ${formatLength(inset, units)}, wanted less than half of the opening's ${formatLength(least, units)}`;
  report.tell("plan/inset", statement.length, message, { wall });
  return 0;
}

function resolveFrame(
  { opening: kind }: OpeningStatement,
  parts: Parts<OpeningPart>,
  inset: Nm,
  draft: WallDraft,
): Frame | null {
  const statement = parts.first("frame");
  if (statement && isSolid({ kind })) {
    const message = `found a frame round a ${kind}, wanted it round a window, a niche or a door: a ${kind} stands before the wall`;
    draft.scope.report.tell("plan/frame", statement.head, message, { wall: draft.name });
    return null;
  }
  const trim = statement && findTrim(statement.trim, draft);
  if (!trim) return null;
  return { trim, join: statement.join, inset, origin: draft.scope.report.origin(statement) };
}

/** Measured sides may reach past the bare wall's rectangle, and openings with them. */
function isInWall(
  { at, free, size, kind }: Opening,
  { head }: OpeningStatement,
  edges: Readonly<Record<Side, Edge>>,
  { size: wallSize, scope, name }: WallDraft,
): boolean {
  const reach = (side: Side, pick: (...values: number[]) => number): Nm =>
    pick(0, ...edges[side].measured.map(({ off }) => off));
  const left = reach("left", Math.min);
  const right = wallSize.across + reach("right", Math.max);
  const bottom = reach("bottom", Math.min);
  const top = wallSize.up + reach("top", Math.max);
  const shown = (nm: Nm): string => formatLength(nm, scope.units);
  const tell = (found: string, wanted: string): boolean => {
    const message = `found the ${kind}'s ${found}, wanted ${wanted}`;
    scope.report.tell("plan/opening-outside", head, message, { wall: name });
    return false;
  };
  const farRight = (free.x?.max ?? at.x) + size.across;
  const farTop = (free.y?.max ?? at.y) + size.up;
  if (at.x < left)
    return tell(`left side at ${shown(at.x)}`, `it inside the wall, at ${shown(left)} or more`);
  if (farRight > right)
    return tell(
      `right side at ${shown(farRight)}`,
      `it inside the wall, at ${shown(right)} or less`,
    );
  if (at.y < bottom)
    return tell(`bottom at ${shown(at.y)}`, `it inside the wall, at ${shown(bottom)} or more`);
  if (farTop > top)
    return tell(`top at ${shown(farTop)}`, `it inside the wall, at ${shown(top)} or less`);
  return true;
}

/** One that may move may have a place elsewhere; another that lies in a step takes nothing from the tile. */
function isOffSteps(
  { at, free, size, kind }: Opening,
  { head }: OpeningStatement,
  { outline, scope, name: wall }: WallDraft,
): boolean {
  if (!outline || free.x || free.y) return true;
  const box = { left: at.x, bottom: at.y, right: at.x + size.across, top: at.y + size.up };
  if (!isInStep(outline.corners, box)) return true;
  const message = `found the ${kind} in a step of the outline, where no wall is, wanted it in the wall`;
  scope.report.tell("plan/opening-outside", head, message, { wall });
  return false;
}

/**
 * An opening that a slope of the outline cuts, or that lies beyond one, is kept, since what of it is in the wall takes tile
 * away. What stands before the wall may reach past it.
 */
function tellOverSlope(
  { at, free, size, kind }: Opening,
  { head }: OpeningStatement,
  { outline, scope, name: wall }: WallDraft,
): void {
  if (!outline || free.x || free.y || isSolid({ kind })) return;
  const box = { left: at.x, bottom: at.y, right: at.x + size.across, top: at.y + size.up };
  const isCut = slopeCuts(outline.corners, box);
  if (!isCut && stepCuts(outline.corners, box)) return;
  if (!isCut && holdsMiddle(outline.corners, box)) return;
  const message =
    `found the ${kind} ${isCut ? "over a slope of the outline" : "outside the outline"}, wanted it inside: ` +
    "only what of it is in the wall takes tile away, without the corners that it has there";
  scope.report.tell("plan/opening-outside", head, message, { wall, severity: "warning" });
}

/** The opening at a place apart from the others, the first of those it may have; null, and told, where there is none. */
function apartFrom(
  opening: Opening,
  { head }: OpeningStatement,
  others: readonly Opening[],
  { scope, name: wall }: WallDraft,
): Opening | null {
  const places = xPlaces(opening, others).flatMap((x) =>
    yPlaces(opening, others).map((y) => ({ ...opening, at: { x, y } })),
  );
  const apart = places.find((place) => !others.some((candidate) => overlap(place, candidate)));
  if (apart) return apart;
  const other = others.find((candidate) => overlap(opening, candidate))!;
  const message = `found \`${opening.name}\` over \`${other.name}\`, wanted openings apart`;
  const related = [placeOf(other.origin, "the other opening")];
  scope.report.tell("plan/opening-overlap", head, message, { wall, related });
  return null;
}

/** Where an opening that may move is clear of another one first, if it is at all. */
function xPlaces({ at, free: { x }, size }: Opening, others: readonly Opening[]): Nm[] {
  if (!x) return [at.x];
  const beside = others.flatMap((other) => [
    other.at.x - size.across,
    other.at.x + other.size.across,
  ]);
  return [x.min, x.max, ...beside.filter((place) => x.min < place && place < x.max)];
}

function yPlaces({ at, free: { y }, size }: Opening, others: readonly Opening[]): Nm[] {
  if (!y) return [at.y];
  const beside = others.flatMap((other) => [other.at.y - size.up, other.at.y + other.size.up]);
  return [y.min, y.max, ...beside.filter((place) => y.min < place && place < y.max)];
}

function overlap(a: Opening, b: Opening): boolean {
  return (
    a.at.x < b.at.x + b.size.across &&
    b.at.x < a.at.x + a.size.across &&
    a.at.y < b.at.y + b.size.up &&
    b.at.y < a.at.y + a.size.up
  );
}
