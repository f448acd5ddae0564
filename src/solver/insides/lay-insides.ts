import type { Nm } from "../../measure/index.js";
import type { Plan, Wall } from "../../model/index.js";
import { atLeast, atMost } from "../chain.js";
import type { EarlierLayout } from "../earlier-layout.js";
import { firstPast, lastBefore, moduleUp } from "../lattice.js";
import { layPieces, type LaidPieces } from "../pieces.js";
import { regionOf } from "../region.js";
import type { Region, SolvedInside, SolvedLay } from "../solved.js";
import { type InsidePlot, type InsideWall, insideWalls } from "./inside-walls.js";
import { type Rows, rowsOf } from "./inside-start.js";

/** The surfaces inside the openings of a laid wall; none of openings without a depth, or that no lay runs round. */
export function layInsides(
  plan: Plan,
  wall: Wall,
  lays: readonly SolvedLay[],
  earlier: EarlierLayout,
): SolvedInside[] {
  return wall.openings.flatMap((opening) => {
    const { inside } = opening;
    const round = lays.find((lay) => lay.region.takeaways.some((each) => each.opening === opening));
    return inside?.tiled && round ? layInside({ plan, wall, opening, inside, round }, earlier) : [];
  });
}

function layInside(plot: InsidePlot, earlier: EarlierLayout): SolvedInside[] {
  const faces = insideWalls(plot);
  // Each surface is as thick as its own tile where it covers another one.
  const plan = { ...plot.plan, walls: [...plot.plan.walls, ...faces.map(({ wall }) => wall)] };
  return faces.map((face) => {
    const region = regionOf(plan, face.wall, face.lay.joint.min);
    const { bounds } = region;
    const isOpen = bounds.left < bounds.right && bounds.bottom < bounds.top;
    return {
      wall: face.wall,
      region,
      lays: isOpen ? [layFace(plot, face, region, earlier)] : [],
      trims: [],
      insides: [],
      refused: null,
      opening: plot.opening,
      face: face.face,
    };
  });
}

function layFace(
  plot: InsidePlot,
  face: InsideWall,
  whole: Region,
  earlier: EarlierLayout,
): SolvedLay {
  const { lay, wall } = face;
  const joint = lay.joint.min;
  const rows = rowsOf(plot, face, whole);
  const region = withoutHidden(whole, rows);
  const laid = layRows(region, rows, earlier);
  const { lattice } = laid;
  const half =
    lattice.x < 0 ? Math.ceil(lattice.face.across / 2) : Math.floor(lattice.face.across / 2);
  return {
    lay,
    region,
    inner: [],
    idPrefix: wall.name,
    below: 0,
    joint,
    across: { kind: "tile", centre: { on: "place", x: lattice.x + half } },
    up: { kind: "joint", y: lattice.y - joint + Math.floor(joint / 2) },
    ...laid,
    choice: null,
    stand: null,
  };
}

/** Course 1 is the lowest row with a piece in it, and begins where that row does. */
function layRows(region: Region, { lattice, leftOf }: Rows, earlier: EarlierLayout): LaidPieces {
  const layFrom = (row: number): LaidPieces => {
    const start = { ...lattice, x: leftOf(row) };
    return earlier.piecesOf(region, start) ?? layPieces(region, start);
  };
  const module = moduleUp(lattice);
  const lowest = firstPast(lattice.y, lattice.face.up, module, region.bounds.bottom);
  const laid = layFrom(lowest);
  const first = Math.round((laid.lattice.y - lattice.y) / module);
  return first === lowest ? laid : layFrom(first);
}

/** No row is set that the sill's or the head's tile would hide whole: the next one that shows is the last. */
function withoutHidden(region: Region, { lattice }: Rows): Region {
  const { bounds, hiddenBottom, hiddenTop } = region;
  const module = moduleUp(lattice);
  const face = lattice.face.up;
  const rowBottom = (row: number): Nm => lattice.y + row * module;
  const first =
    hiddenBottom && rowBottom(firstPast(lattice.y, face, module, hiddenBottom.value[0]!));
  const last = hiddenTop && rowBottom(lastBefore(lattice.y, module, hiddenTop.value[0]!)) + face;
  const bottom = first === null ? region.bottom : atLeast(region.bottom, first);
  const top = last === null ? region.top : atMost(region.top, last);
  return {
    ...region,
    bottom,
    top,
    bounds: {
      ...bounds,
      bottom: Math.max(bounds.bottom, first ?? bounds.bottom),
      top: Math.min(bounds.top, last ?? bounds.top),
    },
  };
}
