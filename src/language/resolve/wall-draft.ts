import type { Nm } from "../../measure/index.js";
import { formatLength, NM_PER } from "../../measure/index.js";
import type { Origin, Range, Wall } from "../../model/index.js";
import type {
  Expression,
  OutlineStatement,
  SizeStatement,
  WallPart,
  WallStatement,
} from "../syntax.js";
import type { Span } from "../line-table.js";
import { type Outline, resolveOutline } from "./outline.js";
import { lengthOf } from "./lengths.js";
import { Names } from "./names.js";
import { Parts } from "./parts.js";
import { rangeOf } from "./range.js";
import type { Scope } from "./scope.js";

/** A wall of a kilometre is no wall. */
const LARGEST_WALL: Nm = 1000 * NM_PER.m;

/** A wall whose name and size are known, and its statements, before its parts are resolved. */
export interface WallDraft {
  readonly name: string;
  readonly origin: Origin;
  /** With the lower end of the heights that its tile may stop at. */
  readonly size: Wall["size"];
  readonly stop: Range | null;
  /** What the plan states of a wall that is no rectangle. */
  readonly outline: Outline | null;
  readonly statement: WallStatement;
  readonly parts: Parts<WallPart>;
  readonly scope: Scope;
}

/** All walls of a plan: what one wall may say of another. */
export interface WallDrafts {
  readonly drafts: readonly WallDraft[];
  /** Every name; null for a wall that can't be drawn. */
  readonly names: Names<WallDraft>;
  /** The first wall that has an opening of this name. */
  readonly wallOfOpening: ReadonlyMap<string, string>;
}

/** Names and measures the walls. One without a size is left out, but its name is known. */
export function draftWalls(statements: readonly WallStatement[], scope: Scope): WallDrafts {
  const names = new Names<WallDraft>("a wall");
  const drafts: WallDraft[] = [];
  for (const [i, statement] of statements.entries()) {
    const origin = scope.report.origin(statement);
    const name = statement.name ?? { text: `wall-${i + 1}`, ...statement.head };
    if (!statement.name) names.loseName();
    const draft = draftWall(statement, name.text, origin, scope);
    const isFirst = names.declare(name, { value: draft, origin }, scope.report);
    if (draft && isFirst) drafts.push(draft);
  }
  return { drafts, names, wallOfOpening: indexOpenings(drafts) };
}

function draftWall(
  statement: WallStatement,
  name: string,
  origin: Origin,
  scope: Scope,
): WallDraft | null {
  const many = ["edge", "leg", "opening", "hole", "lay", "set", "soft-joint"] as const;
  const parts = new Parts(statement.body, scope.report, name, many);
  const message = "found no `size`, wanted the bare wall's, such as `size 60 x 96`";
  const outlineStatement = parts.first("outline");
  const outline = outlineStatement ? resolveOutline(outlineStatement, scope, name) : null;
  const isShaped = outlineStatement !== undefined || parts.isBroken("outline");
  const sizeStatement = isShaped ? parts.first("size") : parts.need("size", statement, message);
  if (outline && !sizeStatement) {
    const bounds = boundsOf(outline);
    if (!isSmall(Math.max(bounds.across, bounds.up), outlineStatement!, scope, name)) return null;
    if (bounds.up <= 0) return tellBelow(outlineStatement!, scope, name);
    return { name, origin, size: bounds, stop: null, outline, statement, parts, scope };
  }
  const across = sizeStatement && wallLength(sizeStatement.first, scope, name);
  const up = sizeStatement && heights(sizeStatement, scope, name);
  if (!across || !up) return null;
  const size = { across, up: up.from };
  const fits = outline !== null && fitsSize(outline, size, sizeStatement, scope, name);
  return {
    name,
    origin,
    size,
    stop: fits ? null : up.range,
    outline: fits ? outline : null,
    statement,
    parts,
    scope,
  };
}

/** How far an outline reaches rightwards, and up from the level line. */
function boundsOf({ corners }: Outline): Wall["size"] {
  return {
    across: Math.max(...corners.map(({ x }) => x)),
    up: Math.max(...corners.map(({ y }) => y)),
  };
}

function tellBelow(outline: OutlineStatement, { report }: Scope, wall: string): null {
  const message = "found an outline under the level line, wanted it to reach above";
  report.tell("plan/outline", outline.head, message, { wall });
  return null;
}

/** Whether a wall's size is its outline's; told where it isn't, and the outline is left out. */
function fitsSize(
  outline: Outline,
  size: Wall["size"],
  statement: SizeStatement,
  { units, report }: Scope,
  wall: string,
): boolean {
  const bounds = boundsOf(outline);
  const isRange = statement.upTo !== null;
  if (!isRange && bounds.across === size.across && bounds.up === size.up) return true;
  const shown = ({ across, up }: Wall["size"]) =>
    `${formatLength(across, units)} x ${formatLength(up, units)}`;
  const message = `found a size of ${shown(size)}, wanted that of the outline, ${shown(bounds)}, or none; the outline is left out`;
  report.tell("plan/outline", statement.head, message, { wall });
  return false;
}

function wallLength(expression: Expression, scope: Scope, wall: string): Nm | null {
  const nm = lengthOf(expression, "positive", scope, wall);
  return nm === null || isSmall(nm, expression, scope, wall) ? nm : null;
}

function heights(
  { second, upTo }: SizeStatement,
  scope: Scope,
  wall: string,
): ReturnType<typeof rangeOf> {
  const ranged = rangeOf(second, upTo, "positive", scope, wall);
  const highest = ranged && (ranged.range?.max ?? ranged.from);
  return highest !== null && isSmall(highest, second, scope, wall) ? ranged : null;
}

function isSmall(nm: Nm, expression: Span, scope: Scope, wall: string): boolean {
  if (nm <= LARGEST_WALL) return true;
  const { units, report } = scope;
  const message = `found ${formatLength(nm, units)}, wanted a wall of at most ${formatLength(LARGEST_WALL, units)}`;
  report.tell("plan/wall-too-large", expression, message, { wall });
  return false;
}

function indexOpenings(drafts: readonly WallDraft[]): Map<string, string> {
  const walls = new Map<string, string>();
  for (const { name, parts } of drafts) {
    for (const { name: opening } of parts.all("opening")) {
      if (opening && !walls.has(opening.text)) walls.set(opening.text, name);
    }
  }
  return walls;
}
