import { NM_PER, type Nm } from "../measure/index.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../solver/index.js";
import { type WallCorner, wallCornersOver } from "./corner.js";

/** A lay of several courses is a band up to this height (common practice: to about a foot). */
const HIGHEST_BAND: Nm = 12 * NM_PER.inch;

/** A band with the lays it touches. */
export interface Band {
  readonly lay: SolvedLay;
  /** The lay that it stands on. */
  readonly under: SolvedLay;
  /** null where the tile ends with the band: the cap of a wainscot. */
  readonly over: SolvedLay | null;
}

/**
 * The bands of a wall, from the bottom up: liners, borders, caps. A band is a lay
 * - that runs from one side of the wall to the other,
 * - that has one course, or is 12 in high at most, as has every lay of the wall with its tile,
 * - that is of another tile than the lays under and over it, and
 * - that has a higher lay somewhere under it, and where there is tile over it, one over it too: so a liner on
 *   either side of a wider band is one, and so is what they enclose.
 *
 * A lowest lay (a base) is none: it follows the floor.
 */
export function bandsOf({ lays }: SolvedWall): Band[] {
  return lays
    .flatMap((lay) => bandOf(lay, lays) ?? [])
    .sort((a, b) => a.lay.region.bounds.bottom - b.lay.region.bounds.bottom);
}

function bandOf(lay: SolvedLay, lays: readonly SolvedLay[]): Band | null {
  if (lay.courses.length === 0 || lay.inner.includes("left") || lay.inner.includes("right")) {
    return null;
  }
  // A few courses of the field over the last band are no band.
  if (lays.some((each) => each.lay.tile === lay.lay.tile && !isShort(each))) return null;
  const { bottom, top } = lay.region.bounds;
  const below = lays.filter(({ region }) => region.bounds.top <= bottom);
  const above = lays.filter(({ region }) => region.bounds.bottom >= top);
  const isHigher = (other: SolvedLay): boolean => heightOf(other) > heightOf(lay);
  if (!below.some(isHigher) || (above.length > 0 && !above.some(isHigher))) return null;
  const under = below.reduce((a, b) => (b.region.bounds.top > a.region.bounds.top ? b : a));
  const over = above.reduce<SolvedLay | null>(
    (a, b) => (a === null || b.region.bounds.bottom < a.region.bounds.bottom ? b : a),
    null,
  );
  const { tile } = lay.lay;
  if (under.lay.tile === tile || over?.lay.tile === tile) return null;
  return { lay, under, over };
}

function isShort(lay: SolvedLay): boolean {
  return lay.courses.length === 1 || heightOf(lay) <= HIGHEST_BAND;
}

function heightOf({ region: { bounds } }: SolvedLay): Nm {
  return bounds.top - bounds.bottom;
}

/** A band of a wall, and the one of the same tile that it meets on the next wall. */
export interface BandPair {
  readonly corner: WallCorner;
  readonly band: Band;
  readonly other: Band;
}

/**
 * The bands of one tile that meet at the corners at which this wall's tile covers another's. A band whose
 * tile the other wall has no band of ends at the corner on purpose. Where both walls have as many, they
 * meet in their order; else each meets the nearest.
 */
export function bandPairs(wall: SolvedWall, plan: SolvedPlan): BandPair[] {
  const own = bandsOf(wall);
  if (own.length === 0) return [];
  return wallCornersOver(wall, plan).flatMap((corner) => {
    const others = bandsOf(corner.other);
    return own.flatMap((band): BandPair[] => {
      const mine = own.filter(({ lay }) => lay.lay.tile === band.lay.lay.tile);
      const theirs = others.filter(({ lay }) => lay.lay.tile === band.lay.lay.tile);
      const inTurn = mine.length === theirs.length ? theirs[mine.indexOf(band)] : undefined;
      const other = inTurn ?? nearest(band, theirs);
      return other ? [{ corner, band, other }] : [];
    });
  });
}

function nearest({ lay }: Band, others: readonly Band[]): Band | null {
  const off = (other: Band): Nm =>
    Math.abs(other.lay.region.bounds.bottom - lay.region.bounds.bottom);
  return others.reduce<Band | null>((a, b) => (a === null || off(b) < off(a) ? b : a), null);
}

/** How far a band stands over its other at the corner: by its bottom, and by its top; negative, under it. */
export function bandOff({ band, other }: BandPair): { readonly bottom: Nm; readonly top: Nm } {
  const [own, their] = [band.lay.region.bounds, other.lay.region.bounds];
  return { bottom: own.bottom - their.bottom, top: own.top - their.top };
}
