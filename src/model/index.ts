export type { Allow, AllowingBlock } from "./allow.js";
export type { Diagnostic, RelatedPlace, Severity } from "./diagnostic.js";
export type {
  CornerMeeting,
  Edge,
  EdgeJoint,
  Meeting,
  OutsideCorner,
  Reading,
  Side,
} from "./edge.js";
export type {
  AcrossStart,
  Bond,
  CarriedStart,
  Centre,
  FieldJoint,
  Lay,
  LayArea,
  LayBound,
  LayJoint,
  MeasuredTop,
  OwnStart,
  SetCourses,
  UpStart,
} from "./lay.js";
export type { Limit, LimitEntry, LimitName, Limits, LimitShape } from "./limits.js";
export type {
  Frame,
  Hole,
  Inside,
  InsideAcross,
  InsideFace,
  InsideLay,
  InsideUp,
  Opening,
  OpeningKind,
  Plate,
} from "./opening.js";
export type { Corner, Leg, Riser, Step } from "./outline.js";
export type { Plan } from "./plan.js";
export type { Origin, Position, SourceRange } from "./source.js";
export type {
  Bag,
  Grout,
  Money,
  Mortar,
  Saw,
  Sealant,
  Share,
  Supplies,
  TilePrice,
} from "./stock.js";
export type { Tile, Trim } from "./tile.js";
export type { Wall } from "./wall.js";
export type { Range, WallOpening, Wanted, Wish } from "./wish.js";
export { edgeTrim, endsTile, isCorner, showsEnd } from "./edge.js";
export {
  faceWords,
  INSIDE_FACES,
  isSolid,
  mayHaveDepth,
  OPENING_KINDS,
  plateReach,
  plateSize,
} from "./opening.js";
export { halfLimit, LIMITS, sliverLimit } from "./limits.js";
export { twinsOf } from "./twins.js";
