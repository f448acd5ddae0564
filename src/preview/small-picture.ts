/// <reference lib="dom" />
import { boundsOfPoints, type PieceGroup, type Points, type WallScene } from "../drawing/index.js";
import { makeSvg } from "./elements.js";
import { boxRing, circleRing } from "./find-spot.js";
import { viewBoxOf } from "./stage.js";

/** More pieces than this are no more than a grey at this size. */
const MOST_PIECES = 1500;

/** A wall as small as a stamp: its outline, its tiles, what is open in it, what findings speak of. */
export function smallPicture(wall: WallScene): SVGSVGElement {
  const { left, top, right, bottom } = boundsOfPoints(wall.bare);
  const edge = 0.01 * Math.max(right - left, bottom - top);
  const box = { left: left - edge, top: top - edge, right: right + edge, bottom: bottom + edge };
  const svg = makeSvg("svg", { viewBox: viewBoxOf(box), class: "small", "aria-hidden": "true" });
  svg.append(makeSvg("path", { class: "small-ground", d: rings([wall.bare]) }));
  svg.append(makeSvg("path", { class: "small-tiles", d: tilesPath(wall) }));
  svg.append(...openingPaths(wall));
  for (const severity of ["information", "warning", "error"] as const) {
    const marked = wall.marks.filter((mark) => mark.severity === severity).map(({ ring }) => ring);
    if (marked.length === 0) continue;
    svg.append(makeSvg("path", { class: `small-marks ${severity}`, d: rings(marked) }));
  }
  return svg;
}

/** What is open in a wall, or stands in or before it, in the tones of the large picture. */
export function openingPaths(wall: WallScene): SVGPathElement[] {
  const holes = wall.holes.map(({ middle, radius }) => circleRing(middle, radius));
  const openings = wall.openings.map(({ kind, box }) => {
    const tone = kind === "window" || kind === "niche" || kind === "door" ? kind : "build";
    return makeSvg("path", { class: `small-openings ${tone}`, d: rings([boxRing(box)]) });
  });
  if (holes.length === 0) return openings;
  return [...openings, makeSvg("path", { class: "small-openings", d: rings(holes) })];
}

function tilesPath(wall: WallScene): string {
  const count = wall.pieces.reduce(
    (sum, { boxes, shapes }) => sum + boxes.length / 4 + shapes.length,
    0,
  );
  if (count > MOST_PIECES) return "";
  return wall.pieces.map(groupPath).join("");
}

/** All pieces of a group in one path. */
export function groupPath({ boxes, shapes }: PieceGroup): string {
  return boxesPath(boxes) + shapes.map(rings).join("");
}

function boxesPath(boxes: readonly number[]): string {
  let d = "";
  for (let i = 0; i < boxes.length; i += 4) {
    d += `M${boxes[i]!} ${boxes[i + 3]!}H${boxes[i + 2]!}V${boxes[i + 1]!}H${boxes[i]!}z`;
  }
  return d;
}

export function rings(each: readonly Points[]): string {
  return each.map((ring) => `M${ring.join(" ")}Z`).join("");
}
