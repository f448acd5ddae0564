import type { Edge, Range, Wall, Wish } from "../../model/index.js";
import type { PlanStatement } from "../syntax.js";
import { resolveAllows } from "./allows.js";
import { breakCircles } from "./carried.js";
import { checkCorners } from "./corners.js";
import { resolveEdges } from "./edges.js";
import { resolveHoles } from "./holes.js";
import { resolveLays } from "./lay.js";
import { resolveOpenings } from "./openings.js";
import type { Parts } from "./parts.js";
import type { Scope } from "./scope.js";
import { shapeOf } from "./shape.js";
import type { WallDraft, WallDrafts } from "./wall-draft.js";
import { draftWalls } from "./wall-draft.js";
import { resolveWishes } from "./wishes.js";

/**
 * The walls of a plan in the order of the text, and what is wanted of them; what can't be understood of
 * one is left out of it.
 */
export function resolveRoom(
  parts: Parts<PlanStatement>,
  scope: Scope,
): { readonly walls: readonly Wall[]; readonly wishes: readonly Wish[] } {
  const all = draftWalls(parts.all("wall"), scope);
  const resolved = all.drafts.map((draft) => resolveWall(draft, all));
  const walls = breakCircles(resolved, all, scope.report);
  checkCorners(walls, all, scope.report);
  const ownOf = (name: string) => all.names.find(name)?.value?.parts.first("prefer");
  return { walls, wishes: resolveWishes(walls, ownOf, parts.first("prefer"), scope) };
}

function resolveWall(draft: WallDraft, all: WallDrafts): Wall {
  const { name, origin, size, statement, scope } = draft;
  const shape = shapeOf(draft, resolveEdges(draft, all));
  const { edges } = shape;
  const openings = resolveOpenings(draft, shape);
  return {
    name,
    title: statement.title?.text ?? "",
    size,
    stop: stopOf(draft, edges.top),
    ...shape,
    openings: openings.kept,
    holes: resolveHoles(draft, openings),
    lays: resolveLays(draft, all, openings),
    allows: resolveAllows(statement.body, scope.report),
    origin,
  };
}

/** Only a top that is free may be left free: any other stands where it is. */
function stopOf({ stop, statement, name, scope }: WallDraft, top: Edge): Range | null {
  if (!stop || top.meets.kind === "free") return stop;
  const message =
    "found a range of heights, wanted one: only where the top is `free` may the tile stop elsewhere";
  const size = statement.body.find(({ kind }) => kind === "size")!;
  scope.report.tell("plan/range", size.head, message, { wall: name });
  return null;
}
