import {
  boundsOfPoints,
  type PictureBox,
  type Place,
  type Points,
  type Scene,
  type WallScene,
} from "../drawing/index.js";
import type { Layer } from "./kept-view.js";

/** What "fit" shows whole: one wall with its dimensions, or all walls, with the notes where they show. */
export function boxToFit(scene: Scene, wallName: string | null, off: readonly Layer[]): PictureBox {
  const chosen = scene.walls.find((wall) => wall.name === wallName);
  if (chosen) return roomOf(chosen, off);
  const noNotes = off.includes("notes") && scene.walls.length > 0;
  return noNotes ? boxRound(scene.walls.map((wall) => roomOf(wall, off))) : scene.view;
}

/** A wall with the labels and dimensions round it that are shown, as the picture counts. */
export function roomOf(wall: WallScene, off: readonly Layer[]): PictureBox {
  const boxes = [boundsOfPoints(wall.bare)];
  if (!off.includes("labels") && !off.includes("dimensions")) {
    boxes.push(...wall.labels.map((label) => label.box));
  }
  if (!off.includes("dimensions")) {
    boxes.push(...wall.dimensions.map(({ extensions }) => boundsOfPoints(extensions)));
  }
  return shifted(boxRound(boxes), wall.at);
}

/** Where a finding is in the picture: its box, and the outlines of its pieces as their wall counts. */
export interface FindingPlace {
  readonly box: PictureBox;
  readonly at: Place;
  /** Empty for a finding that speaks of the whole wall. */
  readonly rings: readonly Points[];
}

/** Where a finding is: at its pieces, else at its wall; null when it has no place in the picture. */
export function placeOfFinding(
  scene: Scene,
  wallName: string | null,
  pieces: readonly string[],
): FindingPlace | null {
  const wall = scene.walls.find((each) => each.name === wallName);
  if (!wall) return null;
  const rings = wall.marks.filter(({ piece }) => pieces.includes(piece)).map(({ ring }) => ring);
  const round = rings.length > 0 ? boxRound(rings.map(boundsOfPoints)) : boundsOfPoints(wall.bare);
  return { box: shifted(round, wall.at), at: wall.at, rings };
}

/** A box as the picture counts, that was told from `at`. */
export function shifted({ left, top, right, bottom }: PictureBox, { x, y }: Place): PictureBox {
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
