export type {
  Batch,
  Cost,
  CutPiece,
  CutTile,
  DrilledHole,
  Fence,
  GroutTakeoff,
  Materials,
  Mitre,
  MortarTakeoff,
  Notch,
  PieceCut,
  PlacedPiece,
  SawWork,
  SealantTakeoff,
  Takeoff,
  Taper,
  TileAreas,
  TilesBought,
  TilesToCome,
  TileTakeoff,
  TrimCut,
  TrimPlace,
  TrimTakeoff,
  WallCuts,
} from "./takeoff.js";
export { allCuts } from "./cuts/all-cuts.js";
export { mitredEdges } from "./cuts/mitres.js";
export { mortarBags } from "./materials/mortar.js";
export { takeoff } from "./plan-takeoff.js";
