/// <reference lib="dom" />
import {
  boundsOfPoints,
  type PictureBox,
  type PieceKind,
  type WallScene,
} from "../../drawing/index.js";
import { make, makeSvg } from "../elements.js";
import { boxRing, circleRing } from "../find-spot.js";
import { groupPath, rings } from "../small-picture.js";
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

/** Walls as small pictures of one scale: whole tiles, cut ones and slivers told apart, openings left open. */
export function optionPicture(walls: readonly WallScene[]): HTMLElement {
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
    ...walls.map((wall, i) => wallPicture(wall, boxes[i]!, scale)),
  );
}

function wallPicture(wall: WallScene, box: PictureBox, scale: number): SVGSVGElement {
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
  add("option-whole", wall.trims.map(({ pieces, cut }) => rings([...pieces, ...cut])).join(""));
  const openings = wall.openings.map((opening) => boxRing(opening.box));
  const holes = wall.holes.map(({ middle, radius }) => circleRing(middle, radius));
  add("small-openings", rings([...openings, ...holes]));
  return svg;
}
