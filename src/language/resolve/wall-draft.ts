import type { Nm } from "../../measure/index.js";
import { formatLength, NM_PER } from "../../measure/index.js";
import type { Origin, Range, Wall } from "../../model/index.js";
import type { Expression, SizeStatement, WallPart, WallStatement } from "../syntax.js";
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
  const many = ["edge", "opening", "hole", "lay"] as const;
  const parts = new Parts(statement.body, scope.report, name, many);
  const message = "found no `size`, wanted the bare wall's, such as `size 60 x 96`";
  const sizeStatement = parts.need("size", statement, message);
  const across = sizeStatement && wallLength(sizeStatement.first, scope, name);
  const up = sizeStatement && heights(sizeStatement, scope, name);
  if (!across || !up) return null;
  const size = { across, up: up.from };
  return { name, origin, size, stop: up.range, statement, parts, scope };
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

function isSmall(nm: Nm, expression: Expression, scope: Scope, wall: string): boolean {
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
