export type { PlanDiagnostic } from "./diagnostics.js";
export type { PlanDocument } from "./document.js";
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
export type { FigureUnits, PlanService } from "./plan-service.js";
export type { Turns, Workspace } from "./workspace.js";
export { createService } from "./plan-service.js";
