import type { SolvedWall } from "../../solver/index.js";
import type { WallScene } from "../scene.js";
import { bareOutline, groundBands, hiddenStrips } from "./ground.js";
import { pieceGroups } from "./pieces.js";
import type { Setting } from "./setting.js";
import { wallSentence, wallTitle } from "./words.js";

/** What the scene of every surface that tile is laid on holds, a wall's or one inside an opening. */
export type SurfaceScene = Pick<
  WallScene,
  "name" | "title" | "description" | "bare" | "bands" | "pieces" | "hidden"
>;

/** A surface by itself: what it is called, its ground and its tile. */
export function surfaceScene(solved: SolvedWall, setting: Setting): SurfaceScene {
  const { wall } = solved;
  return {
    name: wall.name,
    title: wallTitle(wall),
    description: wallSentence(solved, setting),
    bare: bareOutline(solved),
    bands: groundBands(solved),
    pieces: pieceGroups(solved, setting.plan.limits),
    hidden: hiddenStrips(solved),
  };
}
