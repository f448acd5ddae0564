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
