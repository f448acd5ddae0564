import { divideRounded, type Nm } from "../../measure/index.js";
import {
  type Edge,
  edgeTrim,
  endsTile,
  type Opening,
  type Side,
  type Wall,
} from "../../model/index.js";
import type { Box, Region, SolvedWall, Takeaway } from "../../solver/index.js";
import { grown, rangeBetween, reaching, ringOf } from "../../solver/index.js";
import { pictureRing } from "../picture.js";
import type { Band, Hidden, Points } from "../scene.js";
import {
  bareSides,
  movedOut,
  outlineOf,
  ringBetween,
  runsOf,
  type SideRuns,
  type Sides,
} from "./sides.js";
import { softBands } from "./soft-bands.js";
import { aroundSteps, clearOfSteps, riserBands, stepBands } from "./step-ground.js";

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** The outline of the bare wall. */
export function bareOutline(solved: SolvedWall): Points {
  const bare = bareSides(solved.wall);
  return pictureRing(aroundSteps(outlineOf(runsOf(bare)), bare, solved.wall.steps));
}

/**
 * What shows between and round the pieces. The grout is the whole region: pieces are laid over it,
 * so that each joint is seen in its true width. Soft joints are bands of their own.
 */
export function groundBands(solved: SolvedWall): Band[] {
  if (solved.lays.length === 0) return [];
  const { region, wall } = solved;
  const grout: Band = {
    kind: "grout",
    part: "field",
    rings: [pictureRing(aroundSteps(outlineOf(runsOf(region)), region, region.steps))],
  };
  const bare = bareSides(wall);
  return [
    grout,
    ...edgeBands(wall, region, bare, solved.lays[0]!.joint),
    ...stepBands(wall, region, bare),
    ...riserBands(wall, region, bare, solved.lays[0]!.joint),
    ...region.takeaways.flatMap((takeaway) => openingBand(wall, takeaway)),
    ...softBands(solved),
  ];
}

/** The strips that other walls' tile covers. */
export function hiddenStrips({ wall, region }: SolvedWall): Hidden[] {
  const bare = bareSides(wall);
  const strips: Hidden[] = [];
  const limits = {
    left: region.hiddenLeft,
    right: region.hiddenRight,
    bottom: region.hiddenBottom,
    top: region.hiddenTop,
  };
  for (const side of SIDES) {
    const limit = limits[side];
    if (!limit) continue;
    const seen = runsOf({ ...bare, [side]: limit })[side];
    strips.push({
      side,
      ring: pictureRing(ringBetween(runsOf(bare)[side], seen)),
      limit: pictureRing(seen),
    });
  }
  return strips;
}

function edgeBands(wall: Wall, region: Region, bare: Sides, joint: Nm): Band[] {
  const { edges, steps } = wall;
  const band = (kind: Band["kind"], side: Side, from: SideRuns, to: SideRuns): Band[] => {
    const rings = clearOfSteps(ringBetween(to[side], from[side]), steps);
    return rings.length === 0 ? [] : [{ kind, part: side, rings: rings.map(pictureRing) }];
  };
  const widths = {
    left: ownJoint(edges.left),
    right: ownJoint(edges.right),
    bottom: ownJoint(edges.bottom),
    top: ownJoint(edges.top),
  };
  const inner = runsOf(region);
  const middle = runsOf(movedOut(wall, region, widths));
  const outer = runsOf(bare);
  return SIDES.flatMap((side): Band[] => {
    const { meets, joint: stated } = edges[side];
    // Behind an end's trim the ground is grout up to the trim's outer edge.
    const trim = edgeTrim(meets);
    if (trim) {
      const end = movedOut(wall, region, { ...widths, [side]: trim.face.across + joint });
      return band("grout", side, inner, runsOf(end));
    }
    if (endsTile(meets)) return [];
    const bands: Band[] = [];
    if (stated && stated.width > 0) {
      bands.push(...band(stated.kind === "movement" ? "soft" : "grout", side, inner, middle));
    }
    if (meets.kind === "corner" && meets.lap === "over") {
      bands.push(...band("build", side, middle, outer));
    }
    return bands;
  });
}

/** What of a side's joint lies before this wall's tile: in a mitre, half of it. */
function ownJoint({ meets, joint }: Edge): Nm {
  const width = joint?.width ?? 0;
  return meets.kind === "outside" && meets.lap === "mitre" ? divideRounded(width, 2) : width;
}

/**
 * The soft joint round an opening. Without a frame it lies between the opening and the tile; with
 * one, the frame's tile reaches the opening, and the joint is the bead between it and what fills it.
 */
function openingBand(wall: Wall, takeaway: Takeaway<Opening>): Band[] {
  const { opening, box } = takeaway;
  const width = opening.movement ?? 0;
  if (width === 0) return [];
  const inner = openingBox(wall, takeaway);
  const [outside, inside] = opening.frame
    ? [grown(inner, -opening.frame.inset), grown(inner, -opening.frame.inset - width)]
    : [box, inner];
  if (inside.left >= inside.right || inside.bottom >= inside.top) return [];
  // A door's joint runs up one jamb, over its head and down the other; a soffit's hangs as it stands.
  const foot = {
    ...(opening.reaches === "floor" ? { bottom: inner.bottom } : {}),
    ...(opening.reaches === "ceiling" ? { top: inner.top } : {}),
  };
  return [
    {
      kind: opening.frame ? "bead" : "soft",
      part: `opening-${opening.name}`,
      rings: [
        { ...outside, ...foot },
        { ...inside, ...foot },
      ].map((each) => pictureRing(ringOf(each))),
    },
  ];
}

/** The opening itself; what stands on the floor goes down to the bare wall's lowest point under it. */
export function openingBox(wall: Wall, { opening }: Takeaway<Opening>): Box {
  const { at, size } = opening;
  const left = at.x;
  const right = at.x + size.across;
  const bare = bareSides(wall);
  const floor = rangeBetween(bare.bottom, left, right).low;
  const ceiling = rangeBetween(bare.top, left, right).high;
  const stands = wall.steps.filter(({ meets }) => meets.top !== null);
  const hangs = wall.steps.filter(({ meets }) => meets.bottom !== null);
  const ends = {
    floor: lowestOver(
      stands.map(({ left, right, top }) => ({ left, right, level: top })),
      { left, right, level: floor },
    ),
    ceiling: -lowestOver(
      hangs.map(({ left, right, bottom }) => ({ left, right, level: -bottom })),
      { left, right, level: -ceiling },
    ),
  };
  return reaching({ left, bottom: at.y, right, top: at.y + size.up }, opening, ends);
}

/** A level from one place across to another. */
interface Tread {
  readonly left: Nm;
  readonly right: Nm;
  readonly level: Nm;
}

/** The lowest that a floor comes between its ends with treads on it. */
function lowestOver(treads: readonly Tread[], { left, right, level }: Tread): Nm {
  const places = treads.flatMap((tread) => [tread.left, tread.right]);
  return [left, ...places.filter((x) => x > left && x < right)].reduce((lowest, x) => {
    const under = treads.filter((tread) => tread.left <= x && x < tread.right);
    return Math.min(lowest, Math.max(level, ...under.map((tread) => tread.level)));
  }, Infinity);
}
