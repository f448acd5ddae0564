import type { Side, Wall } from "../model/index.js";
import type { Chain } from "./chain.js";
import type { Region } from "./solved.js";

/**
 * A region in which pieces are judged by their bounds along the slopes of the wall's outline: a piece that a
 * slope cuts ends in a point however it is laid, so that its narrow end says nothing (common practice).
 * Along a measured side, which only leans, the narrow end counts.
 */
export function judgedRegion(wall: Wall, region: Region): Region {
  const side = (name: Side): Chain =>
    wall.edges[name].outlined ? { at: [0], value: [region.bounds[name]] } : region[name];
  return {
    ...region,
    left: side("left"),
    right: side("right"),
    bottom: side("bottom"),
    top: side("top"),
  };
}
