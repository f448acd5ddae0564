import type { Syntax } from "../../language/index.js";
import { exactLength, type Nm } from "../../measure/index.js";
import type { Lay } from "../../model/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";

/** Widens a lay's joint to a least; a range that ends above it keeps its end. */
export function jointEdit(
  { outcome, tree }: DocumentState,
  { min, max }: Syntax.JointStatement,
  had: Lay["joint"],
  least: Nm,
): TextEdit {
  const replaced = max && had.max > least ? min : { start: min.start, end: (max ?? min).end };
  return { range: tree.lines.range(replaced), text: exactLength(least, outcome.plan.units) };
}
