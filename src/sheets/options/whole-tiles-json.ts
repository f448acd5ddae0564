import { type Nm, toMillimetres } from "../../measure/index.js";
import {
  holeFits,
  layRound,
  restHeights,
  openingFits,
  type OpeningFit,
  type Place,
  type SolvedWall,
  stopHeights,
  topLay,
  type WholeSize,
} from "../../solver/index.js";

/** Where openings, holes and the wall's top would leave whole tiles, the lays as they are; lengths in mm. */
export function wholeTilesJson(solved: SolvedWall): object {
  const { openings, holes } = solved.wall;
  const top = topLay(solved);
  const stops = top && stopHeights(solved, top);
  return {
    openings: openings.flatMap((opening) => {
      const lay = layRound(solved, opening);
      const fits = lay && openingFits(solved, lay, opening);
      if (!fits) return [];
      const { isOn, moved, sized, sizes } = fits;
      return {
        name: opening.name,
        lay: lay.lay.name,
        onJoints: isOn,
        moved: moved && fitJson(moved),
        sized: sized && fitJson(sized),
        sizes: { across: sizes.across.map(sizeJson), up: sizes.up.map(sizeJson) },
      };
    }),
    rests: openings.flatMap((opening) => {
      const lay = layRound(solved, opening);
      const rest = lay && restHeights(solved, lay, opening);
      if (!rest) return [];
      const { edge, isWhole, below, above } = rest;
      const heights = {
        below: below === null ? null : mm(below),
        above: above === null ? null : mm(above),
      };
      return { name: opening.name, lay: lay.lay.name, edge, whole: isWhole, ...heights };
    }),
    holes: holes.map((hole) => {
      const lay = layRound(solved, hole);
      const { tile = null, joint = null } = lay ? holeFits(lay, hole) : {};
      return { name: hole.name, tile: tile && placeJson(tile), joint: joint && placeJson(joint) };
    }),
    top: stops && {
      whole: stops.isWhole,
      below: stops.below === null ? null : mm(stops.below),
      above: mm(stops.above),
    },
  };
}

function fitJson({ at, size, tiles, joints }: OpeningFit): object {
  return {
    at: placeJson(at),
    size: [mm(size.across), mm(size.up)],
    tiles: [tiles.across, tiles.up],
    courses: joints.beside,
    uprightsOnJointsIn: joints.met,
  };
}

function sizeJson({ tiles, size }: WholeSize): object {
  return { tiles, size: mm(size) };
}

function placeJson({ x, y }: Place): readonly [number, number] {
  return [mm(x), mm(y)];
}

function mm(nm: Nm): number {
  return toMillimetres(nm);
}
