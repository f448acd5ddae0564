import type { Wall } from "../../model/index.js";
import type { WallStatement } from "../syntax.js";
import { resolveAllows } from "./allows.js";
import { checkCorners } from "./corners.js";
import { resolveEdges } from "./edges.js";
import { resolveHoles } from "./holes.js";
import { resolveLay } from "./lay.js";
import { resolveOpenings } from "./openings.js";
import type { Scope } from "./scope.js";
import type { WallDraft, WallDrafts } from "./wall-draft.js";
import { draftWalls } from "./wall-draft.js";

/** The walls of a plan in the order of the text; what can't be understood of one is left out of it. */
export function resolveWalls(statements: readonly WallStatement[], scope: Scope): Wall[] {
  const all = draftWalls(statements, scope);
  const walls = all.drafts.map((draft) => resolveWall(draft, all));
  checkCorners(walls, all, scope.report);
  return walls;
}

function resolveWall(draft: WallDraft, all: WallDrafts): Wall {
  const { name, origin, size, statement, scope } = draft;
  const edges = resolveEdges(draft, all);
  const openings = resolveOpenings(draft, edges);
  return {
    name,
    title: statement.title?.text ?? "",
    size,
    edges,
    openings: openings.kept,
    holes: resolveHoles(draft, openings),
    lay: resolveLay(draft, all, openings),
    allows: resolveAllows(statement.body, scope.report),
    origin,
  };
}
