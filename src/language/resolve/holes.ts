import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import type { Hole, Opening, Plate } from "../../model/index.js";
import type { HoleStatement, WrittenPlate } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import { isInStep } from "./outline.js";
import { Names } from "./names.js";
import type { ResolvedOpenings } from "./openings.js";
import type { PlanCode } from "./plan-code.js";
import { placeOf } from "./report.js";
import type { Scope } from "./scope.js";
import type { WallDraft } from "./wall-draft.js";
import { withinCount } from "./within-count.js";

/** The round holes of a wall; one outside the wall, in an opening or over another hole is left out. */
export function resolveHoles(draft: WallDraft, openings: ResolvedOpenings): Hole[] {
  const names = new Names<Hole>("a hole");
  const kept: Hole[] = [];
  for (const statement of withinCount(draft.parts.all("hole"), "holes", draft)) {
    const hole = resolveHole(statement, draft);
    const fits =
      hole !== null &&
      isOffSteps(hole, statement, draft) &&
      stands(hole, statement, openings.kept, kept, draft);
    const { report } = draft.scope;
    const origin = report.origin(statement);
    const isFirst = names.declare(statement.name, { value: fits ? hole : null, origin }, report);
    if (fits && isFirst) kept.push(hole);
  }
  return kept;
}

function resolveHole(statement: HoleStatement, { scope, name: wall }: WallDraft): Hole | null {
  const x = lengthOf(statement.x, "any", scope, wall);
  const y = lengthOf(statement.y, "any", scope, wall);
  const across = lengthOf(statement.across, "positive", scope, wall);
  const plate = statement.plate && resolvePlate(statement.plate, scope, wall);
  if (x === null || y === null || across === null) return null;
  return {
    name: statement.name.text,
    at: { x, y },
    across,
    plate,
    origin: scope.report.origin(statement),
  };
}

/** One that can't be understood is left out: the hole is cut all the same. */
function resolvePlate({ across, up }: WrittenPlate, scope: Scope, wall: string): Plate | null {
  const width = lengthOf(across, "positive", scope, wall);
  const height = up && lengthOf(up, "positive", scope, wall);
  if (width === null || (up && height === null)) return null;
  return height === null
    ? { kind: "round", across: width }
    : { kind: "square", across: width, up: height };
}

/** A hole that lies in a step of the outline is none in the tile. */
function isOffSteps(
  { at: { x, y }, across }: Hole,
  { head }: HoleStatement,
  { outline, scope, name: wall }: WallDraft,
): boolean {
  if (!outline) return true;
  const half = Math.ceil(across / 2);
  const box = { left: x - half, bottom: y - half, right: x + half, top: y + half };
  if (!isInStep(outline.corners, box)) return true;
  const message =
    "found the hole in a step of the outline, where no wall is, wanted it in the wall";
  scope.report.tell("plan/hole-outside", head, message, { wall });
  return false;
}

function stands(
  hole: Hole,
  { head }: HoleStatement,
  openings: readonly Opening[],
  holes: readonly Hole[],
  { size, scope, name: wall }: WallDraft,
): boolean {
  const { report, units } = scope;
  const tell = (code: PlanCode, message: string, over?: Hole | Opening): boolean => {
    const related = over ? { related: [placeOf(over.origin, `\`${over.name}\``)] } : {};
    report.tell(code, head, message, { wall, ...related });
    return false;
  };
  const shown = (nm: Nm): string => formatLength(nm, units);
  if (!isInside(hole, size)) {
    const { x, y } = hole.at;
    const message = `found a hole ${shown(hole.across)} across at ${shown(x)}, ${shown(y)}, wanted it inside the wall of ${shown(size.across)} x ${shown(size.up)}`;
    return tell("plan/hole-outside", message);
  }
  const opening = openings.find((candidate) => reaches(hole, candidate));
  if (opening) {
    return tell(
      "plan/hole-overlap",
      `found \`${hole.name}\` in \`${opening.name}\`, wanted it in the tile`,
      opening,
    );
  }
  const other = holes.find((candidate) => areOver(hole, candidate));
  if (!other) return true;
  return tell(
    "plan/hole-overlap",
    `found \`${hole.name}\` over \`${other.name}\`, wanted holes apart`,
    other,
  );
}

/** Twice every length, so that half a diameter stays whole. */
function isInside({ at, across }: Hole, size: WallDraft["size"]): boolean {
  return (
    2 * at.x >= across &&
    2 * at.y >= across &&
    2 * at.x + across <= 2 * size.across &&
    2 * at.y + across <= 2 * size.up
  );
}

/** Whether the circle reaches into the rectangle; touching it is no fault. */
function reaches({ at, across }: Hole, { at: corner, size }: Opening): boolean {
  const nearX = Math.min(Math.max(at.x, corner.x), corner.x + size.across);
  const nearY = Math.min(Math.max(at.y, corner.y), corner.y + size.up);
  return isNearer(at.x - nearX, at.y - nearY, across);
}

function areOver(a: Hole, b: Hole): boolean {
  return isNearer(a.at.x - b.at.x, a.at.y - b.at.y, a.across + b.across);
}

/** Whether two points are less than half of `twice` apart; squares of nanometres are past a number's whole digits. */
function isNearer(x: Nm, y: Nm, twice: Nm): boolean {
  const square = (nm: Nm): bigint => BigInt(nm) ** 2n;
  return 4n * (square(x) + square(y)) < square(twice);
}
