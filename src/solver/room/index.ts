export { type Measured, measureRoom } from "./measure-room.js";
export { isFree, movedOpenings, settle, settledAcross, settledLay, settledUp } from "./settle.js";
export { placeSpanning, type SpannedLay } from "./spanning-places.js";
export { isRoom, layRoom, type WallChosen } from "./solve-room.js";
export { isSharingJoint, jointGroups } from "./clusters.js";
export { cornerPairs, type LayPair } from "./corners.js";
export type { Nearer, RoomFound } from "./search-room.js";
export type { TiledAt } from "./wanting.js";
