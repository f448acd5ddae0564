import { buildWallScene } from "../../drawing/index.js";
import type { SolvedWall } from "../../solver/index.js";
import { isOn } from "./findings-block.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";
import { titleOf } from "./words.js";

/** One wall alone, with its own findings. */
export function wallPicture({ solved, diagnostics }: Ground, wall: SolvedWall): Block {
  const own = diagnostics.filter((found) => isOn(wall.wall.name, found));
  const scene = buildWallScene(solved, wall, own);
  return { kind: "picture", scene, caption: `${titleOf(wall.wall)}, seen from the room` };
}
