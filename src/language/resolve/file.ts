import type { Unit } from "../../measure/index.js";
import { NM_PER } from "../../measure/index.js";
import { didYouMean } from "../nearest.js";
import type { PlanStatement, SyntaxTree, UnitsStatement } from "../syntax.js";
import { resolveLets } from "./lets.js";
import { Parts } from "./parts.js";
import { Report } from "./report.js";
import { Scope } from "./scope.js";
import { resolveTile, resolveTrim } from "./stock.js";
import { resolveSupplies } from "./supplies.js";
import type { Library } from "./library.js";

/** A file whose names are declared: what a plan and the files that it uses have in common. */
export interface ResolvedFile {
  readonly scope: Scope;
  readonly parts: Parts<PlanStatement>;
}

const UNITS: readonly string[] = Object.keys(NM_PER);

/** Declares what a file names and what comes with the files that it uses. */
export function resolveFile(tree: SyntaxTree, file: string, library: Library): ResolvedFile {
  const report = new Report(file, tree.lines);
  report.tellSyntax(tree.problems);
  const parts = new Parts(tree.statements, report, undefined, [
    "let",
    "use",
    "tile",
    "trim",
    "wall",
    "rules",
  ]);
  const scope = new Scope(report, unitsOf(parts.first("units"), report));
  for (const use of parts.all("use")) library.bring(use, scope);
  resolveLets(parts.all("let"), scope);
  for (const tile of parts.all("tile")) resolveTile(tile, scope);
  for (const trim of parts.all("trim")) resolveTrim(trim, scope);
  resolveSupplies(parts, scope);
  return { scope, parts };
}

/** Inches where a plan doesn't say. */
function unitsOf(statement: UnitsStatement | undefined, report: Report): Unit {
  if (!statement) return "inch";
  const { unit } = statement;
  if (isUnit(unit.text)) return unit.text;
  const message = `found the unit \`${unit.text}\`, wanted inch, mm, cm, m or foot${didYouMean(unit.text, UNITS)}`;
  report.tell("plan/units", unit, message);
  return "inch";
}

function isUnit(text: string): text is Unit {
  return UNITS.includes(text);
}
