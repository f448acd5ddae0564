import {
  boundsOfPoints,
  type Badge,
  type PictureBox,
  type Place,
  type Points,
  type Scene,
  type WallScene,
} from "../drawing/index.js";
import { isInside, pieceAt, pieceRings, type PieceIndex } from "./piece-index.js";

/** What stands at a place of the picture. */
export interface Spot {
  /** The same while the pointer stays on the same thing. */
  readonly key: string;
  /** null for a badge among the notes. */
  readonly wall: WallScene | null;
  /** The place, as the wall counts. */
  readonly at: Place;
  /** Its outline, as the wall counts; empty for the ground between things. */
  readonly rings: readonly Points[];
  /** The number of a finding's badge. */
  readonly badge: string | null;
  /** The piece's number in the wall's index. */
  readonly piece: number | null;
}

/** What stands at a place of the picture, uppermost first; null beside the walls. */
export function findSpot(
  scene: Scene,
  place: Place,
  indexOf: (wall: WallScene) => PieceIndex,
): Spot | null {
  const note = badgeAt(scene.badges, place);
  if (note) return badgeSpot(null, place, note);
  for (const wall of scene.walls) {
    const at = { x: place.x - wall.at.x, y: place.y - wall.at.y };
    const badge = badgeAt(wall.badges, at);
    if (badge) return badgeSpot(wall, at, badge);
    if (isInBox(boundsOfPoints(wall.bare), at)) return wallSpot(wall, at, indexOf);
  }
  return null;
}

function wallSpot(wall: WallScene, at: Place, indexOf: (wall: WallScene) => PieceIndex): Spot {
  const spot = (key: string, rings: readonly Points[], piece: number | null = null): Spot => ({
    key: `${wall.name}/${key}`,
    wall,
    at,
    rings,
    badge: null,
    piece,
  });
  const hole = wall.holes.find(
    ({ middle, radius }) => Math.hypot(at.x - middle.x, at.y - middle.y) <= radius,
  );
  if (hole) return spot(`hole ${hole.name}`, [circleRing(hole.middle, hole.radius)]);
  const opening = wall.openings.find(({ box }) => isInBox(box, at));
  if (opening) return spot(`opening ${opening.name}`, [boxRing(opening.box)]);
  for (const { part, pieces, cut } of wall.trims) {
    const ring = [...pieces, ...cut].find((each) => isInside([each], at.x, at.y));
    if (ring) return spot(`trim ${part} ${ring[0]!} ${ring[1]!}`, [ring]);
  }
  const index = indexOf(wall);
  const piece = pieceAt(index, at);
  if (piece >= 0) return spot(`piece ${piece}`, pieceRings(index, piece), piece);
  const band = wall.bands.find(
    ({ kind, rings }) => kind !== "grout" && isInside(rings, at.x, at.y),
  );
  return band ? spot(`${band.kind} ${band.part}`, band.rings) : spot("ground", []);
}

function badgeSpot(wall: WallScene | null, at: Place, badge: Badge): Spot {
  return {
    key: `badge ${badge.number} ${badge.middle.x} ${badge.middle.y}`,
    wall,
    at,
    rings: [circleRing(badge.middle, badge.radius)],
    badge: badge.number,
    piece: null,
  };
}

function badgeAt(badges: readonly Badge[], { x, y }: Place): Badge | null {
  return (
    badges.find(({ middle, radius }) => Math.hypot(x - middle.x, y - middle.y) <= radius) ?? null
  );
}

const CIRCLE_SIDES = 48;

export function circleRing({ x, y }: Place, radius: number): Points {
  return Array.from({ length: CIRCLE_SIDES }, (_, i) => (2 * Math.PI * i) / CIRCLE_SIDES).flatMap(
    (turn) => [x + radius * Math.cos(turn), y + radius * Math.sin(turn)],
  );
}

export function boxRing({ left, top, right, bottom }: PictureBox): Points {
  return [left, bottom, right, bottom, right, top, left, top];
}

function isInBox({ left, top, right, bottom }: PictureBox, { x, y }: Place): boolean {
  return x >= left && x <= right && y >= top && y <= bottom;
}
