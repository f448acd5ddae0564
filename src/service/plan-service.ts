import type { Unit } from "../measure/index.js";
import { buildPicture } from "./build-picture.js";
import { diagnosticsOf, type PlanDiagnostic } from "./diagnostics.js";
import type { PlanDocument } from "./document.js";
import { DocumentStates } from "./document-state.js";
import { Figures } from "./figures.js";
import type { Picture, SpotQuestion, SpotReading } from "./picture.js";
import { readSpot } from "./read-spot.js";
import type { Workspace } from "./workspace.js";

/** Which units figures are told in: the plan's own, or one for all plans. */
export type FigureUnits = "plan" | Unit;

/**
 * All that an editor can ask of a plan's text. Plain functions over documents: nothing here knows an
 * editor, a protocol or a file. What a text comes to is worked out once for each version.
 */
export interface PlanService {
  /** Solves a document, unless that is done: a host sees which files are asked for. */
  readonly prepare: (document: PlanDocument) => void;
  /** The files that a document used when it was last solved, directly or through others, there or not. */
  readonly usedFiles: (document: PlanDocument) => readonly string[];
  readonly diagnostics: (document: PlanDocument) => PlanDiagnostic[];
  /** What a preview shows. */
  readonly picture: (document: PlanDocument) => Picture;
  /** What stands at a spot of the picture; null when nothing does, or the version is another. */
  readonly spot: (
    document: PlanDocument,
    question: SpotQuestion,
    units: FigureUnits,
  ) => SpotReading | null;
}

/** The service over the files that a host knows. */
export function createService(workspace: Workspace): PlanService {
  const states = new DocumentStates(workspace);
  const figures = (document: PlanDocument, units: FigureUnits): Figures =>
    new Figures(units === "plan" ? states.of(document).outcome.plan.units : units);
  return {
    prepare: (document) => void states.of(document).outcome,
    usedFiles: (document) => states.of(document).usedFiles,
    diagnostics: (document) => diagnosticsOf(states.of(document)),
    picture: (document) => buildPicture(states.of(document)),
    spot: (document, question, units) =>
      readSpot(states.of(document), question, figures(document, units)),
  };
}
