export { type Measured, measureRoom } from "./measure-room.js";
export { isFree, movedOpenings, settle, settledAcross, settledLay, settledUp } from "./settle.js";
export { isRoom, layRoom, type RoomLaid } from "./solve-room.js";
