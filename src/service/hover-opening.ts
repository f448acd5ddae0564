import { counted, type Nm } from "../measure/index.js";
import {
  faceWords,
  type Hole,
  type InsideAcross,
  type InsideFace,
  type InsideUp,
  isSolid,
  type Opening,
  type Side,
} from "../model/index.js";
import {
  type Box,
  type Cut,
  cutOf,
  frameOuter,
  holeFits,
  layRound,
  openingFits,
  pieceBounds,
  restHeights,
  type SolvedLay,
  type SolvedWall,
  visibleExtent,
} from "../solver/index.js";
import { holeFitWords, openingFitWords, plateWords, restWords } from "../sheets/index.js";
import type { Figures } from "./figures.js";
import { heading, lines, paragraphs, plain } from "./markdown.js";

/** An opening in figures: where it is, its frame, and what stands under, over and beside it. */
export function hoverOpening(wall: SolvedWall, opening: Opening, figures: Figures): string {
  const { at, size, movement, frame, kind, name } = opening;
  const outer = frameOuter(opening);
  const joint =
    movement === null ? "no movement joint" : `movement joint ${figures.length(movement)}`;
  return paragraphs([
    heading(kind, name),
    lines([
      `${figures.size(size.across, size.up)}, ${joint}`,
      `across ${figures.reach(at.x, at.x + size.across)}, up ${figures.reach(at.y, at.y + size.up)}`,
      frame && outer
        ? `frame ${plain(frame.trim.name)}, ${frame.join}: outside ${figures.size(outer.right - outer.left, outer.top - outer.bottom)}`
        : null,
      insideLine(opening, figures),
    ]),
    lines(insidesLines(wall, opening, figures)),
    lines(besideLines(wall, opening, figures)),
    lines(jointLines(wall, opening, figures)),
  ]);
}

/** How deep it is, and how what lies level in it or on it drains. */
function insideLine(opening: Opening, figures: Figures): string | null {
  if (!opening.inside) return null;
  const { depth, fall } = opening.inside;
  const [deep, drains] = isSolid(opening) ? ["stands out", "top"] : ["depth", "sill"];
  return `${deep} ${figures.length(depth)}, ${drains} ${fallWords(fall, figures)}`;
}

function fallWords(fall: Nm | null, figures: Figures): string {
  if (fall === null) return "without a stated fall";
  if (fall === 0) return "flat";
  const way = fall > 0 ? "towards the room" : "back into the wall";
  return `falls ${figures.length(Math.abs(fall))} ${way}`;
}

/** How each surface inside it is laid, and how much of that is cut: `back: mosaic stack, joint 1/16 in; 30 pieces, 12 of them cut`. */
function insidesLines({ insides }: SolvedWall, opening: Opening, figures: Figures): string[] {
  return insides
    .filter((inside) => inside.opening === opening)
    .map(({ face, lays: [laid] }) => {
      if (!laid) return `${faceWords(face)}: no room for tile`;
      const { lay, joint, pieces } = laid;
      const { bond } = lay;
      const how = bond.kind === "stack" ? "stack" : `running ${bond.p}/${bond.q}`;
      const cut = pieces.cut.subarray(0, pieces.count).filter((each) => each !== 0).length;
      const start = startWords(opening, face, figures);
      return (
        `${faceWords(face)}: ${plain(lay.tile.name)} ${how}, joint ${figures.length(joint)}${start}; ` +
        `${counted(pieces.count, "piece")}, ${cut === 0 ? "none" : cut} of them cut`
      );
    });
}

/** Where a surface starts, as far as the plan states it: `, tile in its middle, full course from the bottom`. */
function startWords({ inside }: Opening, face: InsideFace, figures: Figures): string {
  const own = inside?.lays[face];
  const words = [
    own?.across && acrossWords(face, own.across, figures),
    own?.up && upWords(face, own.up, figures),
  ];
  return words.map((each) => (each ? `, ${each}` : "")).join("");
}

function acrossWords(face: InsideFace, across: InsideAcross, figures: Figures): string {
  if (across.kind === "full-tile") {
    const runsIn = face === "left" || face === "right";
    const end = across.from === face ? "front" : "back";
    return `full tile from the ${runsIn ? end : across.from}`;
  }
  const { centre } = across;
  if (centre.on === "surface") return `${across.kind} in its middle`;
  const place = centre.on === "place" ? `at ${figures.length(centre.x)}` : "on the wall";
  return `${across.kind} centred ${place}`;
}

function upWords(face: InsideFace, up: InsideUp, figures: Figures): string {
  if (up.kind === "joint") return `joint at ${figures.length(up.y)}`;
  const runsIn = face === "sill" || face === "head";
  const isFront = (face === "sill") === (up.from === "bottom");
  return `full course from the ${runsIn ? (isFront ? "front" : "back") : up.from}`;
}

/** Where it would be on the joints, told of one that is off them. */
function jointLines(wall: SolvedWall, opening: Opening, figures: Figures): string[] {
  const lay = layRound(wall, opening);
  const rest = lay && restHeights(wall, lay, opening);
  if (rest) return [...restWords(rest, (nm) => figures.length(nm)), ...chosenNote(lay)];
  const fits = lay && openingFits(wall, lay, opening);
  if (!fits || fits.isOn) return [];
  return [...openingFitWords(fits, (nm) => figures.length(nm)), ...chosenNote(lay)];
}

/** Where the start is left to the solver, another place may make it choose another. */
function chosenNote({ choice }: SolvedLay): string[] {
  return choice ? ["from the start chosen now: write it down first"] : [];
}

/** What words call the strip of tile at each side of an opening, and which way it is measured. */
const STRIPS: readonly (readonly [Side, string, "width" | "height"])[] = [
  ["bottom", "under it", "height"],
  ["top", "over it", "height"],
  ["left", "left of it", "width"],
  ["right", "right of it", "width"],
];

function besideLines(wall: SolvedWall, opening: Opening, figures: Figures): string[] {
  const box = wall.region.takeaways.find((takeaway) => takeaway.opening === opening)?.box;
  if (!box) return [];
  return STRIPS.flatMap(([side, words, measure]) =>
    wall.lays.flatMap((lay) => {
      const strip = stripAt(lay, box, side, measure);
      if (!strip) return [];
      const of = wall.lays.length > 1 ? ` of ${plain(lay.lay.name)}` : "";
      return [`${words}: ${stripWords(strip, lay, measure, figures)}${of}`];
    }),
  );
}

interface Strip {
  readonly least: Nm;
  readonly most: Nm;
}

/** An L or U cut reaches past the opening's corner: its legs are told by the rules. */
const REACHING: ReadonlySet<Cut> = new Set(["notch", "slot"]);

/** The sizes of a lay's pieces that end at a side of the opening; null where none does. */
function stripAt(
  { region, pieces }: SolvedLay,
  box: Box,
  side: Side,
  measure: "width" | "height",
): Strip | null {
  let [least, most] = [Infinity, 0];
  for (let i = 0; i < pieces.count; i++) {
    const piece = pieceBounds(pieces, i);
    if (!endsAt(piece, box, side) || REACHING.has(cutOf(pieces, i))) continue;
    const seen = visibleExtent(region, piece);
    if (!seen) continue;
    least = Math.min(least, seen[measure]);
    most = Math.max(most, seen[measure]);
  }
  return most === 0 ? null : { least, most };
}

function endsAt(piece: Box, box: Box, side: Side): boolean {
  const beside = piece.bottom < box.top && box.bottom < piece.top;
  const level = piece.left < box.right && box.left < piece.right;
  switch (side) {
    case "bottom":
      return level && piece.top === box.bottom;
    case "top":
      return level && piece.bottom === box.top;
    case "left":
      return beside && piece.right === box.left;
    case "right":
      return beside && piece.left === box.right;
  }
}

function stripWords(
  { least, most }: Strip,
  { lattice }: SolvedLay,
  measure: "width" | "height",
  figures: Figures,
): string {
  const whole = measure === "width" ? lattice.face.across : lattice.face.up;
  const what = measure === "width" ? "wide" : "high";
  if (least === whole) return measure === "height" ? "a whole course" : "whole tiles";
  if (least === most) return `pieces ${figures.length(least)} ${what}`;
  return `pieces ${figures.reach(least, most)} ${what}`;
}

/** A hole in figures, and the nearest middles of a tile and of a joint. */
export function hoverHole(wall: SolvedWall, hole: Hole, figures: Figures): string {
  const lay = layRound(wall, hole);
  const fits = lay && holeFits(lay, hole);
  const { plate } = hole;
  return paragraphs([
    heading("hole", hole.name),
    lines([
      `${figures.length(hole.across)} across, centre ${figures.length(hole.at.x)} from the left and ${figures.length(hole.at.y)} up`,
      plate && `covered by a plate of ${plateWords(plate, (nm) => figures.length(nm))}`,
    ]),
    lines(fits ? [...holeFitWords(fits, (nm) => figures.length(nm)), ...chosenNote(lay)] : []),
  ]);
}
