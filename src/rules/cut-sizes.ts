import type { Nm } from "../measure/index.js";
import {
  courseBottom,
  type Extent,
  isInside,
  isSetCourse,
  judgedRegion,
  judgeOf,
  judgePiece,
  pieceBounds,
  pieceId,
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
  readonly groups: Map<number, Group>;
}

/** One finding for each direction and cause for which pieces of the wall have the fault. */
export function findCutSizes(wall: SolvedWall, plan: SolvedPlan, fault: SizeFault): Finding[] {
  return wall.lays.flatMap((lay) => {
    const groups = groupFaults({ wall, lay, groups: new Map() }, plan, fault);
    return groups.map((group) => tellGroup(wall, plan, lay, group, fault));
  });
}

function groupFaults(sight: Sight, plan: SolvedPlan, { bits }: SizeFault): Group[] {
  const { wall, lay, groups } = sight;
  const { bounds, count, course, cut, visible } = lay.pieces;
  const judge = judgeOf(
    judgedRegion(wall.wall, lay.region),
    lay.lay,
    plan.plan.limits,
    isInside(wall),
  );
  for (let i = 0; i < count; i++) {
    if (cut[i] === 0 && !visible.has(i)) continue;
    const [left, bottom] = [bounds[4 * i]!, bounds[4 * i + 1]!];
    const [right, top] = [bounds[4 * i + 2]!, bounds[4 * i + 3]!];
    const tileLeft = tileLeftOf(lay.lattice, course[i]!, left);
    const faults = judgePiece(judge, left, bottom, right, top, tileLeft);
    if (faults & bits.across) addTo(sight, i, "across");
    if (faults & bits.up) addTo(sight, i, "up");
  }
  return [...groups.values()];
}

function addTo({ wall, lay, groups }: Sight, i: number, direction: Direction): void {
  const { takeaways } = lay.region;
  const seen = visibleExtent(judgedRegion(wall.wall, lay.region), pieceBounds(lay.pieces, i))!;
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
