import type { SolvedWall } from "../../solver/index.js";
import type { WallCuts } from "../../takeoff/index.js";
import { section, text } from "./blocks.js";
import { courseBlocks } from "./course-block.js";
import { cutsBlocks } from "./cuts-block.js";
import { findingsBlocks } from "./findings-block.js";
import type { Ground } from "./ground.js";
import { handOffBlocks } from "./hand-offs-block.js";
import { insideBlocks } from "./inside-blocks.js";
import { linesBlocks } from "./lines-block.js";
import type { Page } from "./paper.js";
import { softJointBlocks } from "./soft-joints-block.js";
import { trimBlocks } from "./trim-block.js";
import { wallFacts } from "./wall-facts.js";
import { wallPicture } from "./wall-picture.js";
import { titleOf } from "./words.js";

/** All that is taped to one wall. */
export function wallPage(ground: Ground, wall: SolvedWall, cuts: WallCuts): Omit<Page, "id"> {
  const { name } = wall.wall;
  return {
    title: titleOf(wall.wall),
    wall: name,
    blocks: [
      ...findingsBlocks(ground.diagnostics, name),
      // First, so that on paper it has a whole sheet, and the facts the next with what they belong to.
      wallPicture(ground, wall),
      wallFacts(ground, wall, cuts.mark),
      ...(wall.lays.length === 0 ? [text(notLaid(wall))] : []),
      ...section("Level and plumb lines", linesBlocks(ground, wall)),
      ...section("Courses", courseBlocks(ground, wall)),
      ...section("Cuts", [...cutsBlocks(ground, cuts), ...handOffBlocks(ground, cuts)]),
      ...insideBlocks(ground, wall, cuts),
      ...section("Soft joints", softJointBlocks(ground, name)),
      ...section("Trim", trimBlocks(ground, wall)),
    ],
  };
}

function notLaid({ refused }: SolvedWall): string {
  if (!refused) return "No tile is laid on this wall.";
  return `Not laid: it asks for ${refused.pieces} pieces, and the most is ${refused.most}.`;
}
