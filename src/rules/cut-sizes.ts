import type { Nm } from "../measure/index.js";
import type { Limits } from "../model/index.js";
import {
  courseBottom,
  type Extent,
  isInside,
  isSetCourse,
  type Judge,
  judgedRegion,
  judgeOf,
  judgePiece,
  pieceBounds,
  pieceId,
  type Region,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  tileLeftOf,
  visibleExtent,
} from "../solver/index.js";
import {
  cutterAt,
  cutterKey,
  type CutPlace,
  type Direction,
  placeBlocks,
  placeName,
  placeOrigin,
} from "./cutter.js";
import type { Finding } from "./rule.js";
import { length, pieceCount, sizesOff, verb } from "./words.js";

/** A fault of a piece's size. */
export interface SizeFault {
  /** The bit of FAULT that is meant, in each direction. */
  readonly bits: Readonly<Record<Direction, number>>;
  /** The least size of a tile with this face. */
  least(face: Nm): Nm;
  /** `at least 1 in`, for that size in words. */
  wanted(least: string): string;
}

/** Pieces that have one fault for one cause. */
interface Group {
  readonly place: CutPlace;
  readonly pieces: number[];
  least: Nm;
  most: Nm;
}

/** What the pieces of one lay are looked at with. */
interface Sight {
  readonly wall: SolvedWall;
  readonly lay: SolvedLay;
  /** The lay's region as pieces are judged in it. */
  readonly region: Region;
  readonly groups: Map<number, Group>;
}

/** One finding for each direction and cause for which pieces of the wall have the fault. */
export function findCutSizes(wall: SolvedWall, plan: SolvedPlan, fault: SizeFault): Finding[] {
  return wall.lays.flatMap((lay) => {
    const region = judgedRegion(wall.wall, lay.region);
    const groups = groupFaults({ wall, lay, region, groups: new Map() }, plan, fault);
    return groups.map((group) => tellGroup(wall, plan, lay, group, fault));
  });
}

function groupFaults(sight: Sight, plan: SolvedPlan, { bits }: SizeFault): Group[] {
  const { groups } = sight;
  for (const { piece, faults } of faultyPieces(sight, plan)) {
    if (faults & bits.across) addTo(sight, piece, "across");
    if (faults & bits.up) addTo(sight, piece, "up");
  }
  return [...groups.values()];
}

/** A piece and all that is wrong with its size: a sum of FAULT. */
interface FaultyPiece {
  readonly piece: number;
  readonly faults: number;
}

/** What is told of lays, and by which limits: each rule about sizes asks about all pieces. */
const told = new WeakMap<
  SolvedLay,
  { readonly limits: Limits; readonly pieces: readonly FaultyPiece[] }
>();

function faultyPieces(
  { wall, lay, region }: Sight,
  { plan: { limits } }: SolvedPlan,
): readonly FaultyPiece[] {
  const known = told.get(lay);
  if (known?.limits === limits) return known.pieces;
  const pieces = findFaulty(lay, judgeOf(region, lay.lay, limits, isInside(wall)));
  told.set(lay, { limits, pieces });
  return pieces;
}

function findFaulty(lay: SolvedLay, judge: Judge): FaultyPiece[] {
  const { count, course, cut, visible } = lay.pieces;
  const found: FaultyPiece[] = [];
  for (let i = 0; i < count; i++) {
    if (cut[i] === 0 && !visible.has(i)) continue;
    const { left, bottom, right, top } = pieceBounds(lay.pieces, i);
    const tileLeft = tileLeftOf(lay.lattice, course[i]!, left);
    const faults = judgePiece(judge, left, bottom, right, top, tileLeft);
    if (faults !== 0) found.push({ piece: i, faults });
  }
  return found;
}

function addTo({ lay, region, groups }: Sight, i: number, direction: Direction): void {
  const { takeaways } = lay.region;
  const seen = visibleExtent(region, pieceBounds(lay.pieces, i))!;
  const place = placeOf(lay, i, seen, direction);
  const size = direction === "across" ? seen.width : seen.height;
  const stride = takeaways.length + 2;
  const [low, high] = [cutterKey(takeaways, place.low), cutterKey(takeaways, place.high)];
  // What is set is told by itself: it is all that can't be mended.
  const set = isSetCourse(lay, lay.pieces.course[i]!) ? 1 : 0;
  const key = 2 * (((direction === "across" ? 0 : stride) + low) * stride + high) + set;
  const group = groups.get(key) ?? { place, pieces: [], least: size, most: size };
  groups.set(key, group);
  group.pieces.push(i);
  group.least = Math.min(group.least, size);
  group.most = Math.max(group.most, size);
}

/** What cuts a piece; an end that another wall's tile covers counts as cut by its own wall's side. */
function placeOf(
  { region, lattice, pieces }: SolvedLay,
  i: number,
  seen: Extent,
  direction: Direction,
): CutPlace {
  const box = pieceBounds(pieces, i);
  const course = pieces.course[i]!;
  if (direction === "across") {
    const tile = tileLeftOf(lattice, course, box.left);
    const right = seen.left + seen.width;
    return {
      direction,
      low: seen.left > tile ? cutterAt(region.takeaways, box, "left") : null,
      high: right < tile + lattice.face.across ? cutterAt(region.takeaways, box, "right") : null,
    };
  }
  const tile = courseBottom(lattice, course);
  const top = seen.bottom + seen.height;
  return {
    direction,
    low: seen.bottom > tile ? cutterAt(region.takeaways, box, "bottom") : null,
    high: top < tile + lattice.face.up ? cutterAt(region.takeaways, box, "top") : null,
  };
}

function tellGroup(
  wall: SolvedWall,
  plan: SolvedPlan,
  lay: SolvedLay,
  { place, pieces, least, most }: Group,
  fault: SizeFault,
): Finding {
  const n = pieces.length;
  const limit = fault.least(lay.lattice.face[place.direction]);
  const size = `${sizesOff(plan, least, most, limit)} ${place.direction === "across" ? "wide" : "high"}`;
  return {
    origin: placeOrigin(place, lay),
    blocks: placeBlocks(place, lay, wall),
    message:
      `${pieceCount(n)} ${placeName(place, lay)} ${verb(n, "is", "are")} ${size}; ` +
      `${fault.wanted(length(plan, limit))} is wanted`,
    pieces: pieces.map((i) => pieceId(lay, i)),
  };
}
