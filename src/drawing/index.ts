export type {
  Badge,
  Band,
  BandKind,
  DimensionRank,
  Hidden,
  HoleScene,
  Label,
  LabelRole,
  Mark,
  OpeningScene,
  PictureBox,
  PieceGroup,
  PieceKind,
  Place,
  Points,
  RuledLine,
  Scene,
  SeverityMark,
  Swatch,
  SwatchKind,
  TrimScene,
  WallScene,
} from "./scene.js";
export { buildScene } from "./scene/build-scene.js";
export { findingGroups } from "./scene/finding-groups.js";
export { draw } from "./svg/draw.js";
export { tonesAs } from "./theme.js";
