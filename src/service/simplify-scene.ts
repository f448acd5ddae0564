import type { PieceGroup, Scene, WallScene } from "../drawing/index.js";

/** Past this many pieces a plan is drawn with whole tiles as runs: an editor can't draw so many at each key. */
export const MOST_DRAWN = 60_000;

/** Left, top, right and bottom of a box in a group's row of numbers. */
const BOX = 4;

/** A scene whose whole tiles are joined course by course; cut pieces and all else stay as they are. */
export function simplifyScene(scene: Scene): Scene {
  return { ...scene, walls: scene.walls.map(simplifyWall) };
}

function simplifyWall(wall: WallScene): WallScene {
  return { ...wall, pieces: wall.pieces.map(joinRow) };
}

function joinRow(group: PieceGroup): PieceGroup {
  if (group.kind !== "whole") return group;
  const { boxes } = group;
  const joined: number[] = [];
  for (let i = 0; i < boxes.length; i += BOX) {
    const [left, top, right, bottom] = boxes.slice(i, i + BOX) as [number, number, number, number];
    const last = joined.length - BOX;
    const follows =
      last >= 0 &&
      joined[last + 1] === top &&
      joined[last + 3] === bottom &&
      left > joined[last + 2]! &&
      left - joined[last + 2]! < right - left;
    if (follows) joined[last + 2] = right;
    else joined.push(left, top, right, bottom);
  }
  return { ...group, boxes: joined };
}
