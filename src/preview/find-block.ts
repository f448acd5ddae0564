import type { Points, Scene, WallScene } from "../drawing/index.js";
import type { Cursor, Picture, PictureBlock } from "../service/index.js";
import { boxRing, circleRing } from "./find-spot.js";

/** The innermost block that the cursor stands in, or null. */
export function blockAt(picture: Picture, cursor: Cursor | null): PictureBlock | null {
  if (!cursor) return null;
  const { line, character } = cursor.position;
  const holds = ({ place: { uri, range } }: PictureBlock): boolean =>
    uri === cursor.uri &&
    (range.start.line < line ||
      (range.start.line === line && range.start.character <= character)) &&
    (range.end.line > line || (range.end.line === line && range.end.character >= character));
  return picture.blocks.filter(holds).at(-1) ?? null;
}

/** A wall and rings on it, as the wall counts. */
export interface BlockOutline {
  readonly wall: WallScene;
  readonly rings: readonly Points[];
}

/** What a block is in the picture; null for one that is nowhere in it. */
export function outlineOf(scene: Scene, block: PictureBlock): BlockOutline | null {
  const wall = scene.walls.find((each) => each.name === block.wall);
  const rings = wall ? ringsOf(wall, block) : [];
  return wall && rings.length > 0 ? { wall, rings } : null;
}

function ringsOf(wall: WallScene, { kind, name }: PictureBlock): readonly Points[] {
  switch (kind) {
    case "wall":
      return [wall.bare];
    case "lay":
      return wall.bands.find(({ part }) => part === "field")?.rings ?? [wall.bare];
    case "window":
    case "niche":
    case "door":
    case "bench":
    case "curb":
    case "soffit":
      return wall.openings.filter((each) => each.name === name).map(({ box }) => boxRing(box));
    case "hole":
      return wall.holes
        .filter((each) => each.name === name)
        .map(({ middle, radius }) => circleRing(middle, radius));
    case "edge":
      return edgeRings(wall, name);
    case "tile":
    case "trim":
      return [];
  }
}

/** An edge is marked where it is seen: its joint, what covers it, its trim, else the bare wall's side. */
function edgeRings(wall: WallScene, side: string): readonly Points[] {
  const bands = wall.bands.filter(({ part }) => part === side).flatMap(({ rings }) => rings);
  const trims = wall.trims
    .filter(({ part }) => part === `edge-${side}`)
    .flatMap(({ pieces, cut }) => [...pieces, ...cut]);
  const hidden = wall.hidden.filter((each) => each.side === side).map(({ ring }) => ring);
  return [...bands, ...trims, ...hidden];
}
