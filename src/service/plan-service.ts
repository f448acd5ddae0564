import type { Unit } from "../measure/index.js";
import type { Position, SourceRange } from "../model/index.js";
import { buildComparison } from "./build-comparison.js";
import { buildOptions } from "./build-options.js";
import { buildPicture } from "./build-picture.js";
import { buildSheet, type PlanSheet } from "./build-sheet.js";
import { changeLenses } from "./change-lenses.js";
import { Compared } from "./compared.js";
import type {
  ChangeLens,
  ComparisonLook,
  OldPlan,
  PictureChanges,
  PlanComparison,
} from "./comparison.js";
import { type Completion, completionsAt } from "./completion.js";
import { diagnosticsOf, type PlanDiagnostic } from "./diagnostics.js";
import type { PlanDocument } from "./document.js";
import { DocumentState, DocumentStates } from "./document-state.js";
import type { TextEdit } from "./edits.js";
import { Figures } from "./figures.js";
import { NameIndex } from "./file-names.js";
import { type FilePlace, findDefinition } from "./find-definition.js";
import { findThing, referencePlaces } from "./find-references.js";
import type { Fix } from "./fixes/fix.js";
import { fixesAt } from "./fixes/fixes-at.js";
import { type Fold, foldsOf } from "./folding.js";
import { formatEdits } from "./format.js";
import { countsOf } from "./counts.js";
import { type Hint, hintsOf } from "./hints.js";
import { type Hover, hoverAt } from "./hover.js";
import { type NameToken, nameTokens } from "./name-tokens.js";
import { type OutlineItem, outlineOf } from "./outline.js";
import type { Picture, SpotQuestion, SpotReading } from "./picture.js";
import type { PlanOptions } from "./plan-options.js";
import { pictureChanges } from "./picture-changes.js";
import { readSpot } from "./read-spot.js";
import { findRenamable, type Renamable, rename, type Renaming } from "./rename.js";
import { selectionsAt } from "./selections.js";
import type { Turns, Workspace } from "./workspace.js";

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
  /** The mends of what is wrong in a stretch, and what may be written down there. */
  readonly fixes: (document: PlanDocument, range: SourceRange) => Fix[];
  readonly hover: (document: PlanDocument, at: Position, units: FigureUnits) => Hover | null;
  readonly completions: (document: PlanDocument, at: Position) => Completion[];
  /** What was left to the solver, in a stretch or in all of the text. */
  readonly hints: (document: PlanDocument, within?: SourceRange) => Hint[];
  /** What the plan takes of tile and cuts, as hints. */
  readonly counts: (document: PlanDocument, within?: SourceRange) => Hint[];
  /** The names of a text and what they are, in a stretch or in all of it. */
  readonly tokens: (document: PlanDocument, within?: SourceRange) => NameToken[];

  readonly outline: (document: PlanDocument) => OutlineItem[];
  readonly folds: (document: PlanDocument) => Fold[];
  /** The stretches round a place, smallest first. */
  readonly selections: (document: PlanDocument, at: Position) => SourceRange[];
  /** What tidies the text; nothing where it is tidy. */
  readonly format: (document: PlanDocument) => TextEdit[];

  readonly definition: (document: PlanDocument, at: Position) => FilePlace | null;
  /** In all files of the workspace; null where nothing has a name, or when it was called off. */
  readonly references: (
    document: PlanDocument,
    at: Position,
    withDeclaration: boolean,
    turns: Turns,
  ) => Promise<FilePlace[] | null>;
  /** The name that a rename would change; null where none stands. */
  readonly renamable: (document: PlanDocument, at: Position) => Renamable | null;
  readonly rename: (
    document: PlanDocument,
    at: Position,
    newName: string,
    turns: Turns,
  ) => Promise<Renaming>;

  /** What a preview shows; with the walls unfolded where `withRoom`, and corners join any. */
  readonly picture: (document: PlanDocument, withRoom?: boolean) => Picture;
  /**
   * The best few layouts of a wall, or (`wall` null) of the room or of all walls, to choose from; null when it was
   * called off.
   */
  readonly options: (
    document: PlanDocument,
    wall: string | null,
    turns: Turns,
  ) => Promise<PlanOptions | null>;
  /** What stands at a spot of the picture; null when nothing does, or the version is another. */
  readonly spot: (
    document: PlanDocument,
    question: SpotQuestion,
    units: FigureUnits,
  ) => SpotReading | null;

  /** What a setter is given on paper. */
  readonly sheet: (document: PlanDocument) => PlanSheet;

  /** A text that documents can be compared with, such as that of a commit, and the files round it. */
  readonly oldPlan: (document: PlanDocument, workspace: Workspace) => OldPlan;
  /** What a document changes; the walls' picture as it is looked at. */
  readonly comparison: (
    document: PlanDocument,
    old: OldPlan,
    look: ComparisonLook,
  ) => PlanComparison;
  /** What stands over the walls that changed. */
  readonly changeLenses: (document: PlanDocument, old: OldPlan) => ChangeLens[];
  /** The changed pieces, to be marked in the picture; null while the text can't be understood whole. */
  readonly pictureChanges: (document: PlanDocument, old: OldPlan) => PictureChanges | null;
}

/** The service over the files that a host knows. */
export function createService(workspace: Workspace): PlanService {
  const states = new DocumentStates(workspace);
  const index = new NameIndex(workspace);
  const compared = new Compared();
  const of = (document: PlanDocument) => states.of(document);
  const figures = (document: PlanDocument, units: FigureUnits): Figures =>
    new Figures(units === "plan" ? of(document).outcome.plan.units : units);
  return {
    prepare: (document) => of(document).prepare(),
    usedFiles: (document) => of(document).usedFiles,
    diagnostics: (document) => diagnosticsOf(of(document)),
    fixes: (document, range) => fixesAt(of(document), range),
    hover: (document, at, units) => hoverAt(of(document), at, figures(document, units)),
    completions: (document, at) => completionsAt(of(document), at),
    hints: (document, within) => hintsOf(of(document), within),
    counts: (document, within) => countsOf(of(document), within),
    tokens: (document, within) => nameTokens(of(document), index, within),
    outline: (document) => outlineOf(of(document)),
    folds: (document) => foldsOf(of(document)),
    selections: (document, at) => selectionsAt(of(document), at),
    format: (document) => formatEdits(of(document)),
    definition: (document, at) => findDefinition(of(document), index, at),
    references: async (document, at, withDeclaration, turns) => {
      const thing = await findThing(of(document), index, at, turns);
      return thing && referencePlaces(thing, withDeclaration);
    },
    renamable: (document, at) => findRenamable(of(document), index, at),
    rename: (document, at, newName, turns) => rename(of(document), index, at, newName, turns),
    picture: (document, withRoom = false) => buildPicture(of(document), withRoom),
    options: (document, wall, turns) => buildOptions(of(document), wall, turns),
    spot: (document, question, units) => readSpot(of(document), question, figures(document, units)),
    sheet: (document) => buildSheet(of(document)),
    oldPlan: (document, round) =>
      new DocumentState(document, round, states.latestOf(document.file)),
    comparison: (document, old, look) => buildComparison(of(document), old, look, compared),
    changeLenses: (document, old) => changeLenses(of(document), old, compared),
    pictureChanges: (document, old) => pictureChanges(of(document), old, compared),
  };
}
