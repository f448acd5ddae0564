/// <reference lib="dom" />
import {
  boundsOfPoints,
  type PictureBox,
  type PieceGroup,
  type PieceKind,
  type WallScene,
} from "../../drawing/index.js";
import { make, makeSvg } from "../elements.js";
import { groupPath, openingPaths, rings } from "../small-picture.js";
import { viewBoxOf } from "../stage.js";

/** The room that one wall's picture may take, in ems of the page's text. */
const MOST_ACROSS = 17;
const MOST_UP = 8;
/** Of a room of several walls each is smaller, so that two stand beside each other. */
const MOST_ACROSS_OF_ROOM = 8;

/** What is told apart at this size, and what of the pieces it is. */
const TONES: Readonly<Record<"whole" | "cut" | "sliver", readonly PieceKind[]>> = {
  whole: ["whole"],
  cut: ["cut", "notch", "scribe", "hole"],
  sliver: ["sliver"],
};

/**
 * Walls as small pictures of one scale: whole tiles, cut ones and slivers told apart, openings left open. What is
 * `beside` is paler: the tile of lays that aren't spoken of.
 */
export function optionPicture(
  walls: readonly WallScene[],
  beside: readonly PieceGroup[],
): HTMLElement {
  const boxes = walls.map(({ bare }) => boundsOfPoints(bare));
  const across = walls.length > 1 ? MOST_ACROSS_OF_ROOM : MOST_ACROSS;
  // Millimetres of wall to an em of the page.
  const scale = Math.max(
    ...boxes.map(({ left, right }) => (right - left) / across),
    ...boxes.map(({ top, bottom }) => (bottom - top) / MOST_UP),
  );
  return make(
    "div",
    { class: "option-walls", "aria-hidden": "true" },
    ...walls.map((wall, i) => wallPicture(wall, beside, boxes[i]!, scale)),
  );
}

function wallPicture(
  wall: WallScene,
  beside: readonly PieceGroup[],
  box: PictureBox,
  scale: number,
): SVGSVGElement {
  const svg = makeSvg("svg", {
    viewBox: viewBoxOf(box),
    width: `${(box.right - box.left) / scale}em`,
    height: `${(box.bottom - box.top) / scale}em`,
  });
  const add = (name: string, d: string): void => {
    if (d !== "") svg.append(makeSvg("path", { class: name, d }));
  };
  add("small-ground", rings([wall.bare]));
  for (const [name, kinds] of Object.entries(TONES)) {
    const groups = wall.pieces.filter(({ kind }) => kinds.includes(kind));
    add(`option-${name}`, groups.map(groupPath).join(""));
  }
  add("option-beside", beside.map(groupPath).join(""));
  add("option-whole", wall.trims.map(({ pieces, cut }) => rings([...pieces, ...cut])).join(""));
  svg.append(...openingPaths(wall));
  return svg;
}
