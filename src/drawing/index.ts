export type {
  Badge,
  Band,
  BandKind,
  DimensionRank,
  Fate,
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
export type { ComparedWall, OverlayScene, OverlayWall } from "./overlay/overlay-scene.js";
export { buildOverlay } from "./overlay/build-overlay.js";
export { drawOverlay } from "./overlay/draw-overlay.js";
export { buildRoomScene } from "./room/build-room-scene.js";
export { buildScene } from "./scene/build-scene.js";
export { buildWallScene } from "./scene/build-wall-scene.js";
export { boundsOfPoints } from "./picture.js";
export { plainText } from "./plain-text.js";
export { findingGroups } from "./scene/finding-groups.js";
export { draw } from "./svg/draw.js";
export { tonesAs } from "./theme.js";
