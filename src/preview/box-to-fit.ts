import type { PictureBox, Scene, WallScene } from "../drawing/index.js";
import type { Layer } from "./kept-view.js";
import { boundsOf } from "./view.js";

/** What "fit" shows whole: one wall with its dimensions, or all walls, with the notes where they show. */
export function boxToFit(scene: Scene, wallName: string | null, off: readonly Layer[]): PictureBox {
  const chosen = scene.walls.find((wall) => wall.name === wallName);
  if (chosen) return roomOf(chosen, off);
  const noNotes = off.includes("notes") && scene.walls.length > 0;
  return noNotes ? boxRound(scene.walls.map((wall) => roomOf(wall, off))) : scene.view;
}

/** A wall with the labels and dimensions round it that are shown, as the picture counts. */
export function roomOf(wall: WallScene, off: readonly Layer[]): PictureBox {
  const boxes = [boundsOf(wall.bare)];
  if (!off.includes("labels") && !off.includes("dimensions")) {
    boxes.push(...wall.labels.map((label) => label.box));
  }
  if (!off.includes("dimensions")) {
    boxes.push(...wall.dimensions.map(({ extensions }) => boundsOf(extensions)));
  }
  const { left, top, right, bottom } = boxRound(boxes);
  const { x, y } = wall.at;
  return { left: left + x, top: top + y, right: right + x, bottom: bottom + y };
}

/** The box round the pieces that a finding speaks of, or round its wall; null when it has no place. */
export function boxOfPieces(
  scene: Scene,
  wallName: string | null,
  pieces: readonly string[],
): PictureBox | null {
  const wall = scene.walls.find((each) => each.name === wallName);
  if (!wall) return null;
  const marks = wall.marks.filter((mark) => pieces.includes(mark.piece));
  const { left, top, right, bottom } =
    marks.length > 0 ? boxRound(marks.map((mark) => boundsOf(mark.ring))) : boundsOf(wall.bare);
  const { x, y } = wall.at;
  return { left: left + x, top: top + y, right: right + x, bottom: bottom + y };
}

/** The box round boxes; there is at least one. */
function boxRound(boxes: readonly PictureBox[]): PictureBox {
  return {
    left: Math.min(...boxes.map((box) => box.left)),
    top: Math.min(...boxes.map((box) => box.top)),
    right: Math.max(...boxes.map((box) => box.right)),
    bottom: Math.max(...boxes.map((box) => box.bottom)),
  };
}
