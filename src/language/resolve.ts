import type { Diagnostic, Plan } from "../model/index.js";
import { resolveAllows } from "./resolve/allows.js";
import { resolveFile } from "./resolve/file.js";
import { lengthOf } from "./resolve/lengths.js";
import { Library } from "./resolve/library.js";
import { letValues } from "./resolve/let-values.js";
import { resolveLimits } from "./resolve/limits.js";
import { resolveRoom } from "./resolve/walls.js";
import type { Resolved, Source } from "./source.js";
import type { SyntaxTree } from "./syntax.js";

/**
 * The plan that a text means, every name looked up, and what is wrong with it, in the order of the text. What can't
 * be understood is left out; the rest stands. Never throws on a text.
 */
export function resolve(tree: SyntaxTree, source: Source): Resolved {
  const { scope, parts } = resolveFile(tree, source.file, new Library(source));
  const { report } = scope;
  const title = parts.first("plan");
  const bed = parts.first("bed");
  const { walls, wishes } = resolveRoom(parts, scope);
  const plan: Plan = {
    title: title?.title.text ?? "",
    units: scope.units,
    bed: (bed && lengthOf(bed.length, "not-negative", scope)) ?? 0,
    limits: resolveLimits(parts.all("rules"), scope),
    tiles: scope.tiles.values(),
    trims: scope.trims.values(),
    ...scope.shelf.supplies,
    walls,
    wishes,
    allows: resolveAllows(tree.statements, report),
    origin: report.origin(title ?? { start: 0, end: 0, head: { start: 0, end: 0 } }),
  };
  return { plan, lets: letValues(scope), diagnostics: inOrder(report.diagnostics) };
}

function inOrder(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  return [...diagnostics].sort(({ range: a }, { range: b }) => {
    const lines = a.start.line - b.start.line;
    return lines === 0 ? a.start.character - b.start.character : lines;
  });
}
