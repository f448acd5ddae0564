import type { Nm } from "../measure/index.js";
import type { Hole, Origin } from "../model/index.js";
import { plateWords } from "../sheets/index.js";
import {
  type Box,
  openingBox,
  pieceShape,
  type Ring,
  ringOf,
  type Shape,
  type SolvedLay,
  type SolvedWall,
  surfacesOf,
  type TrimRun,
} from "../solver/index.js";
import type { DocumentState } from "./document-state.js";
import { Figures } from "./figures.js";
import type { SpotQuestion, SpotReading } from "./picture.js";
import { readSoftJoint } from "./read-soft-joint.js";
import { readPiece } from "./read-piece.js";

const NM_PER_MM = 1_000_000;

/** A spot in nanometres, from the wall's left substrate and up from its level line. */
interface Spot {
  readonly x: Nm;
  readonly y: Nm;
}

/** What stands at a spot, before its place in the text is turned into the host's. */
export type Read = Omit<SpotReading, "place" | "outline"> & {
  readonly shape: Shape | null;
  readonly origin: Origin;
};

/** What stands at a spot of a wall, in a setter's words; null where nothing does. */
export function readSpot(
  state: DocumentState,
  question: SpotQuestion,
  figures: Figures,
): SpotReading | null {
  if (question.version !== state.document.version) return null;
  const { solved } = state.outcome;
  const wall = surfacesOf(solved.walls).find((each) => each.wall.name === question.wall);
  if (!wall) return null;
  const spot = { x: Math.round(question.x * NM_PER_MM), y: Math.round(-question.y * NM_PER_MM) };
  const read = findPiece(wall, spot, figures) ?? findOther(wall, spot, figures);
  if (!read) return null;
  const { shape, origin, ...reading } = read;
  const place = { uri: state.workspace.uriOf(origin.file), range: origin.range };
  return { ...reading, outline: shape ? pictureOutline(shape.outline) : [], place };
}

/** In millimetres, y down, as in the picture. */
function pictureOutline(ring: Ring): number[] {
  return ring.map((nm, i) => (i % 2 === 0 ? nm : -nm) / NM_PER_MM || 0);
}

function findPiece(wall: SolvedWall, spot: Spot, figures: Figures): Read | null {
  for (const lay of wall.lays) {
    const i = pieceAt(lay, spot);
    if (i !== null) return readPiece(wall, lay, i, figures);
  }
  return null;
}

/** The piece at a spot; a click on a joint finds none. */
function pieceAt({ courses, pieces }: SolvedLay, spot: Spot): number | null {
  const row = courses.findIndex(({ bottom, top }) => bottom <= spot.y && spot.y <= top);
  if (row < 0) return null;
  for (let i = pieces.courseStart[row]!; i < pieces.courseStart[row + 1]!; i++) {
    const bounds = pieces.bounds.subarray(4 * i, 4 * i + 4);
    const [left, bottom, right, top] = bounds as unknown as [Nm, Nm, Nm, Nm];
    if (spot.x < left || spot.x > right || spot.y < bottom || spot.y > top) continue;
    if (!pieces.shapes.has(i) || contains(pieceShape(pieces, i), spot)) return i;
  }
  return null;
}

/** Whether a spot lies in a shape. By crossings to the left; a spot on an edge may fall either way. */
function contains({ outline, holes }: Shape, spot: Spot): boolean {
  return isInRing(outline, spot) && !holes.some((hole) => isInRing(hole, spot));
}

function isInRing(ring: Ring, { x, y }: Spot): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const [ax, ay, bx, by] = [ring[i]!, ring[i + 1]!, ring[j]!, ring[j + 1]!];
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  }
  return inside;
}

function findOther(wall: SolvedWall, spot: Spot, figures: Figures): Read | null {
  return (
    readHole(wall, spot, figures) ??
    readTrim(wall, spot, figures) ??
    readOpening(wall, spot, figures) ??
    readSoftJoint(wall, (shape) => contains(shape, spot), figures) ??
    readJoint(wall, spot, figures)
  );
}

function readHole({ region }: SolvedWall, { x, y }: Spot, figures: Figures): Read | null {
  const found = region.roundHoles.find(({ hole }) => {
    const [dx, dy] = [x - hole.at.x, y - hole.at.y];
    return 4 * (dx * dx + dy * dy) <= hole.across * hole.across;
  });
  if (!found) return null;
  const { hole, box } = found;
  return {
    title: `Hole ${hole.name}`,
    facts: [
      ["across", figures.length(hole.across)],
      ["centre", `${figures.length(hole.at.x)}, ${figures.length(hole.at.y)} up`],
      ...plateFact(hole, figures),
    ],
    shape: { outline: ringOf(box), holes: [] },
    piece: null,
    origin: hole.origin,
  };
}

function plateFact({ plate }: Hole, figures: Figures): [string, string][] {
  return plate ? [["plate", plateWords(plate, (nm) => figures.length(nm))]] : [];
}

function readTrim({ trims }: SolvedWall, spot: Spot, figures: Figures): Read | null {
  for (const run of trims) {
    const at = run.pieces.findIndex(({ shape }) => contains(shape, spot));
    if (at >= 0) return readTrimPiece(run, at, figures);
  }
  return null;
}

function readTrimPiece(run: TrimRun, at: number, figures: Figures): Read | null {
  const { along, side, pieces } = run;
  const { shape, length, mitre, whole } = pieces[at]!;
  const what =
    "opening" in along ? `of ${along.opening.kind} ${along.opening.name}` : "of the wall";
  return {
    title: `Trim at the ${side} ${what}, piece ${at + 1} of ${pieces.length}`,
    facts: [
      ["length", `${figures.length(length)}${whole ? ", uncut" : ""}`],
      ...(mitre.length > 0 ? ([["mitred", `at the ${mitre.join(" and ")}`]] as const) : []),
    ],
    shape,
    piece: null,
    origin: "opening" in along ? (along.opening.frame ?? along.opening).origin : along.edge.origin,
  };
}

function readOpening({ wall }: SolvedWall, spot: Spot, figures: Figures): Read | null {
  const opening = wall.openings.find((each) => isInBox(openingBox(each), spot));
  if (!opening) return null;
  const box = openingBox(opening);
  return {
    title: `${opening.kind[0]!.toUpperCase()}${opening.kind.slice(1)} ${opening.name}`,
    facts: [
      ["size", figures.size(opening.size.across, opening.size.up)],
      ["across", figures.reach(box.left, box.right)],
      ["up", figures.reach(box.bottom, box.top)],
    ],
    shape: { outline: ringOf(box), holes: [] },
    piece: null,
    origin: opening.origin,
  };
}

/** The tiled region's joints, and what lies between it and the wall's sides. */
function readJoint({ wall, region, lays }: SolvedWall, spot: Spot, figures: Figures): Read | null {
  const bare = { left: 0, bottom: 0, right: wall.size.across, top: wall.size.up };
  const [lay] = lays;
  if (lay && isInBox(region.bounds, spot)) {
    const softAt = region.takeaways.find(({ box }) => isInBox(box, spot));
    // Round a frame the joint is the laid one; the soft one is between frame and opening.
    if (softAt?.opening.movement && !softAt.opening.frame) return readSoft(softAt.opening, figures);
    return {
      title: "Joint",
      facts: [["width", figures.length(lay.joint)]],
      shape: null,
      piece: null,
      origin: lay.lay.joint.origin,
    };
  }
  if (!isInBox(bare, spot)) return null;
  const edge = wall.edges[nearestSide(bare, spot)];
  const soft = edge.joint?.kind === "movement";
  return {
    title: `${soft ? "Soft joint" : "Joint"} at the ${edge.side}`,
    facts: edge.joint ? [["width", figures.length(edge.joint.width)]] : [],
    shape: null,
    piece: null,
    origin: edge.origin,
  };
}

function readSoft(
  { kind, name, movement, origin }: SolvedWall["wall"]["openings"][number],
  figures: Figures,
): Read {
  return {
    title: `Soft joint at ${kind} ${name}`,
    facts: [["width", figures.length(movement ?? 0)]],
    shape: null,
    piece: null,
    origin,
  };
}

function nearestSide(box: Box, { x, y }: Spot): "left" | "right" | "bottom" | "top" {
  const off = {
    left: x - box.left,
    right: box.right - x,
    bottom: y - box.bottom,
    top: box.top - y,
  };
  const sides = Object.keys(off) as (keyof typeof off)[];
  return sides.reduce((near, side) => (off[side] < off[near] ? side : near));
}

function isInBox(box: Box, { x, y }: Spot): boolean {
  return x >= box.left && x <= box.right && y >= box.bottom && y <= box.top;
}
