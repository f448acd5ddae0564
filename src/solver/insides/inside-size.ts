import { type Nm, rootRounded, scaleRounded } from "../../measure/index.js";
import type { Inside, Opening, Plan, Tile } from "../../model/index.js";

/** Where the tile inside an opening ends at the front. */
export interface Front {
  /** How far before the wall's substrate; negative behind it. */
  readonly before: Nm;
  /** The joint that is left there, behind a frame that covers the tile's edge; null where that edge shows. */
  readonly joint: Nm | null;
}

/**
 * Where the tile of a surface inside an opening ends. The wall's tile stops beside the opening, so what
 * lines the opening covers that edge and runs out flush with the wall's face, its own edge showing (common
 * practice). A frame covers it where it stands in at least as far as the lining is thick, which
 * then ends a joint behind the frame's back; else the lining runs out to the frame's face.
 */
export function frontOf(
  { bed }: Pick<Plan, "bed">,
  { frame }: Pick<Opening, "frame">,
  lining: { readonly tile: Tile; readonly joint: Nm },
  wallTile: Tile,
): Front {
  if (!frame) return { before: wallTile.thickness + bed, joint: null };
  if (frame.inset >= lining.tile.thickness + bed) return { before: bed, joint: lining.joint };
  return { before: frame.trim.thickness + bed, joint: null };
}

/** From the front to the back, level: what the opening is deep, and what stands before the substrate. */
export function levelRun({ depth }: Inside, { before }: Front): Nm {
  return depth + before;
}

/** How far the sill falls over a level run; it goes on falling before the substrate. Rounded once. */
export function fallOver({ depth, fall }: Inside, run: Nm): Nm {
  return scaleRounded(fall ?? 0, run, depth);
}

/**
 * The true length of a sill along its slope: run x √(depth² + fall²) / depth, by exact arithmetic rounded
 * once to the nearest nanometre.
 */
export function slopeLength({ depth, fall }: Inside, run: Nm): Nm {
  const [d, f, r] = [BigInt(depth), BigInt(fall ?? 0), BigInt(run)];
  return rootRounded(r * r * (d * d + f * f), d * d);
}
