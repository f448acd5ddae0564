export type {
  ChangedWall,
  ChangeLens,
  ComparisonLook,
  ComparisonPicture,
  ComparisonWay,
  OldPlan,
  PictureChanges,
  PlanComparison,
  WallMarks,
} from "./comparison.js";
export type { Completion, CompletionKind } from "./completion.js";
export type { PlanDiagnostic } from "./diagnostics.js";
export type { PlanDocument } from "./document.js";
export type { FileEdits, TextEdit } from "./edits.js";
export type { FilePlace } from "./find-definition.js";
export type { Fix } from "./fixes/fix.js";
export type { Fold } from "./folding.js";
export type { Hint } from "./hints.js";
export type { Hover } from "./hover.js";
export type { NameKind } from "./names.js";
export type { NameToken } from "./name-tokens.js";
export type { OutlineItem, OutlineKind } from "./outline.js";
export type {
  Cursor,
  DocumentPlace,
  Picture,
  PictureBlock,
  PictureFinding,
  PictureWall,
  SpotQuestion,
  SpotReading,
} from "./picture.js";
export type { OptionGroup, PlanOption, PlanOptions } from "./plan-options.js";
export type { PlanSheet } from "./build-sheet.js";
export type { FigureUnits, PlanService } from "./plan-service.js";
export type { Renamable, Renaming } from "./rename.js";
export type { Turns, Workspace } from "./workspace.js";
export { createService } from "./plan-service.js";
