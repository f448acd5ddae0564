import type { Bond, InsideFace, InsideLay } from "../../model/index.js";
import type { LiningStatement, OpeningPart } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import { resolveLiningStart } from "./lining-starts.js";
import type { Parts } from "./parts.js";
import { ratioOf } from "./ratio.js";
import type { WallDraft } from "./wall-draft.js";

/** The surfaces that each word is of; what is said of one goes before what is said of all. */
const FACES: Readonly<Record<LiningStatement["of"], readonly InsideFace[]>> = {
  inside: ["back", "left", "right", "sill", "head"],
  back: ["back"],
  sides: ["left", "right"],
  sill: ["sill"],
  head: ["head"],
};

/** How the surfaces inside an opening of that name are laid that the plan says something of; each word once. */
export function resolveLinings(
  parts: Parts<OpeningPart>,
  opening: string | null,
  draft: WallDraft,
): Readonly<Partial<Record<InsideFace, InsideLay>>> {
  const { scope, name: wall } = draft;
  const first = new Map<LiningStatement["of"], LiningStatement>();
  for (const statement of parts.all("lining")) {
    const earlier = first.get(statement.of);
    if (!earlier) first.set(statement.of, statement);
    else {
      const message = `found \`${statement.of}\` again, wanted it once in this block`;
      const related = [scope.report.place(earlier.head, "the first one")];
      scope.report.tell("plan/said-twice", statement.head, message, { wall, related });
    }
  }
  const lays: Partial<Record<InsideFace, InsideLay>> = {};
  const inOrder = [...first.values()].sort((a, b) => FACES[b.of].length - FACES[a.of].length);
  for (const statement of inOrder) {
    const lay = resolveLining(statement, draft);
    const startOf = resolveLiningStart(statement, opening, draft);
    if (lay) for (const face of FACES[statement.of]) lays[face] = { ...lay, ...startOf(face) };
  }
  return lays;
}

function resolveLining(
  statement: LiningStatement,
  draft: WallDraft,
): Omit<InsideLay, "across" | "up"> | null {
  const { scope, name: wall } = draft;
  const tile = scope.tiles.find(statement.tile.text);
  if (!tile) scope.tiles.tellUnknown(statement.tile, scope.report, wall);
  const bond = statement.bond ? bondOf(statement.bond, draft) : null;
  const joint = statement.joint && lengthOf(statement.joint, "not-negative", scope, wall);
  if (!tile?.value) return null;
  const origin = scope.report.origin(statement);
  return { tile: tile.value, bond, joint, allows: [], origin };
}

/** null, and told, where the offset is no part of a module: then the bond is the usual one. */
function bondOf(
  { offset }: NonNullable<LiningStatement["bond"]>,
  { scope, name: wall }: WallDraft,
): Bond | null {
  if (!offset) return { kind: "stack" };
  const { quantity } = offset;
  const ratio = quantity?.unit === null ? ratioOf(quantity.amount) : null;
  if (ratio && ratio.p > 0 && ratio.p < ratio.q) return { kind: "running", ...ratio };
  const message =
    "found no part of a module, wanted a fraction between 0 and 1, such as 1/2 or 1/3";
  scope.report.tell("plan/bond", offset, message, { wall });
  return null;
}
