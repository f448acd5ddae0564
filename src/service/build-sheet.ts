import { type Paper, paperOf, type SheetFacts, usualPaper } from "../sheets/index.js";
import type { DocumentState } from "./document-state.js";
import { takenOf } from "./taken.js";

/** The setter's sheet of a document: what is printed, and what it is made from. */
export interface PlanSheet {
  readonly version: number;
  readonly facts: SheetFacts;
  readonly paper: Paper;
  /** What it is usually printed on. */
  readonly size: "letter" | "a4";
}

/** The sheet of a plan as it is written now: no revision is named, since the text may be unsaved. */
export function buildSheet({ document, outcome }: DocumentState): PlanSheet {
  const { solved, diagnostics } = outcome;
  const taken = takenOf(solved);
  const facts = { solved, diagnostics, takeoff: taken, revision: null, shownPath };
  const paper = paperOf(solved, diagnostics, taken, { revision: null });
  return { version: document.version, facts, paper, size: usualPaper(solved.plan.units) };
}

function shownPath(file: string): string {
  return file.slice(file.lastIndexOf("/") + 1);
}
