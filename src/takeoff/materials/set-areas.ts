import { divideRounded, type Nm } from "../../measure/index.js";
import { type Edge, edgeTrim, endsTile, type Side, type Step } from "../../model/index.js";
import {
  type Box,
  type Chain,
  doubleArea,
  doublePieceArea,
  doubleRegionArea,
  doubleShapeArea,
  frameInner,
  frameOuter,
  grown,
  grownStep,
  isSetCourse,
  type PieceTable,
  rangeBetween,
  riserMoves,
  sideDrawnIn,
  softJoints,
  type SolvedLay,
  type SolvedWall,
  type Takeaway,
} from "../../solver/index.js";
import type { Layer } from "./volume.js";

/** What covers a wall: twice the areas in nm², exact. */
export interface SetAreas {
  readonly tiles: bigint;
  readonly trims: bigint;
  /** Hard joints round tiles, to trim and to hard edges too. */
  readonly tileJoints: bigint;
  /** Hard joints between trims, as deep as each is thick. */
  readonly trimJoints: readonly Layer[];
}

/** Twice the area of the tile that is on the wall already. */
export function doubleSetArea({ lays }: SolvedWall): bigint {
  let sum = 0n;
  for (const lay of lays.filter(({ stand }) => stand !== null)) {
    for (let i = 0; i < lay.pieces.count; i++) {
      if (isSetCourse(lay, lay.pieces.course[i]!)) sum += doublePieceArea(lay.pieces, i);
    }
  }
  return sum;
}

/**
 * What one lay's tile and the joints that are grouted cover of a laid wall. The wall's trim and the
 * joints between its lays are counted with its first lay.
 */
export function setAreas(solved: SolvedWall, lay: SolvedLay): SetAreas {
  const [first, ...others] = solved.lays;
  const tiles = doubleTableArea(lay.pieces);
  const soft = doubleSoftArea(solved, lay === first ? [lay, null] : [lay]);
  if (lay !== first) {
    const tileJoints = groutedArea(solved, lay) - tiles - soft;
    return { tiles, trims: 0n, tileJoints, trimJoints: [] };
  }
  const trims = solved.trims.flatMap((run) => run.pieces);
  const elsewhere = others.reduce((sum, other) => sum + groutedArea(solved, other), 0n);
  return {
    tiles,
    trims: trims.reduce((sum, { shape }) => sum + doubleShapeArea(shape), 0n),
    tileJoints:
      groutedArea(solved, { ...lay, region: solved.region, inner: [] }) - elsewhere - tiles - soft,
    trimJoints: [...frameJoints(solved), ...edgeTrimJoints(solved)],
  };
}

/** Twice the area of the soft joints in some lays, or between lays (null): neither mortar nor grout is in them. */
function doubleSoftArea(solved: SolvedWall, lays: readonly (SolvedLay | null)[]): bigint {
  return softJoints(solved)
    .runs.flatMap(({ parts }) => parts)
    .filter((part) => lays.includes(part.lay))
    .reduce((sum, { shape }) => sum + doubleShapeArea(shape), 0n);
}

/** What several lays cover together. */
export function sumOfAreas(all: readonly SetAreas[]): SetAreas {
  const sum = (part: "tiles" | "trims" | "tileJoints"): bigint =>
    all.reduce((total, areas) => total + areas[part], 0n);
  return {
    tiles: sum("tiles"),
    trims: sum("trims"),
    tileJoints: sum("tileJoints"),
    trimJoints: all.flatMap(({ trimJoints }) => trimJoints),
  };
}

/** The areas of tables that were asked for: two plans share the table of a wall that didn't change. */
const TABLE_AREAS = new WeakMap<PieceTable, bigint>();

/** Twice the area of all pieces. */
function doubleTableArea(pieces: PieceTable): bigint {
  let area = TABLE_AREAS.get(pieces);
  if (area === undefined) TABLE_AREAS.set(pieces, (area = sumOfPieces(pieces)));
  return area;
}

/** Whole tiles are counted, since a million are all alike. */
function sumOfPieces(pieces: PieceTable): bigint {
  let sum = 0n;
  let [whole, many] = [0, 0];
  for (let i = 0; i < pieces.count; i++) {
    if (pieces.cut[i] !== 0) {
      sum += doublePieceArea(pieces, i);
      continue;
    }
    whole = i;
    many++;
  }
  return many === 0 ? sum : sum + BigInt(many) * doublePieceArea(pieces, whole);
}

/** A lay's region and the hard joints along its trimmed edges, its hard edges and round its frames. */
function groutedArea(
  { wall }: SolvedWall,
  { region, joint, inner }: Pick<SolvedLay, "region" | "joint" | "inner">,
): bigint {
  const out = (side: Side) => (inner.includes(side) ? 0 : hardWidth(wall.edges[side], joint));
  const drawnOut = (side: Side, inward: 1 | -1): Chain =>
    sideDrawnIn(
      wall.edges[side],
      region[side],
      -out(side),
      inward,
      riserMoves(wall, side, (edge) => -hardWidth(edge, joint)),
    );
  const left = drawnOut("left", 1);
  const right = drawnOut("right", -1);
  const bottom = drawnOut("bottom", 1);
  const top = drawnOut("top", -1);
  const [from, to] = [region.bounds.left - out("left"), region.bounds.right + out("right")];
  const bounds: Box = {
    left: from,
    right: to,
    bottom: rangeBetween(bottom, from, to).low,
    top: rangeBetween(top, from, to).high,
  };
  const takeaways = region.takeaways.map((takeaway) => withoutJoint(takeaway, joint));
  const { roundHoles } = region;
  const steps = wall.steps.map((step) => stepWithoutJoint(step, joint));
  return doubleRegionArea({ left, right, bottom, top, bounds, takeaways, roundHoles, steps });
}

/** A step grown by the joints that are not grouted. */
function stepWithoutJoint(step: Step, joint: Nm): Box {
  const grownBy = grownStep(step, joint);
  const hard = (side: Side): Nm => {
    const edge = step.meets[side];
    return edge ? hardWidth(edge, joint) : 0;
  };
  return {
    left: grownBy.left + hard("left"),
    bottom: grownBy.bottom + hard("bottom"),
    right: grownBy.right - hard("right"),
    top: grownBy.top - hard("top"),
  };
}

/** How wide the joint is that is grouted along a side. */
function hardWidth({ meets, joint: stated }: Edge, joint: Nm): Nm {
  if (endsTile(meets)) return edgeTrim(meets) ? joint : 0;
  if (stated?.kind !== "joint") return 0;
  // Of a mitre's joint each wall has half.
  const isMitre = meets.kind === "outside" && meets.lap === "mitre";
  return isMitre ? divideRounded(stated.width, 2) : stated.width;
}

/** What an opening takes, without the grouted joint round its frame. */
function withoutJoint({ opening, box }: Takeaway, joint: Nm): Takeaway {
  if (!opening.frame) return { opening, box };
  const frame = grown(box, -joint);
  // A door's frame has no joint at the floor.
  return { opening, box: opening.reaches === "floor" ? { ...frame, bottom: box.bottom } : frame };
}

/** What frames cover less their pieces: the joints between them, in mitred corners too. */
function frameJoints({ wall, trims }: SolvedWall): Layer[] {
  return wall.openings.flatMap((opening) => {
    const pieces = trims
      .filter(({ along }) => "opening" in along && along.opening === opening)
      .flatMap((run) => run.pieces);
    const [outer, inner] = [frameOuter(opening), frameInner(opening)];
    if (!opening.frame || !outer || !inner || pieces.length === 0) return [];
    const heights = pieces.flatMap(({ shape }) => shape.outline.filter((_, i) => i % 2 === 1));
    const foot = opening.reaches === "floor" ? { bottom: Math.min(...heights) } : {};
    const ring = doubleBoxArea({ ...outer, ...foot }) - doubleBoxArea({ ...inner, ...foot });
    const doubleArea = pieces.reduce((rest, { shape }) => rest - doubleShapeArea(shape), ring);
    return [{ doubleArea, thickness: opening.frame.trim.thickness }];
  });
}

function edgeTrimJoints({ trims }: SolvedWall): Layer[] {
  return trims.flatMap(({ along, joints }) => {
    if (!("edge" in along)) return [];
    const thickness = edgeTrim(along.edge.meets)?.thickness ?? 0;
    return joints.map((ring) => ({ doubleArea: doubleArea(ring), thickness }));
  });
}

function doubleBoxArea({ left, bottom, right, top }: Box): bigint {
  return 2n * BigInt(right - left) * BigInt(top - bottom);
}
