export { type Measured, measureRoom } from "./measure-room.js";
export { isRoom, layRoom, type RoomLaid } from "./solve-room.js";
