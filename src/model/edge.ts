import type { Nm } from "../measure/index.js";
import type { Origin } from "./source.js";
import type { Trim } from "./tile.js";

export type Side = "left" | "right" | "bottom" | "top";

/** What a side of the wall meets. */
export type Meeting =
  | { readonly kind: "pan" | "tub" | "floor" | "ceiling" | "counter" | "wall" }
  /** `under`: the other wall's tile covers this edge; `over`: this wall's tile covers the other's. */
  | { readonly kind: "corner"; readonly wall: string; readonly lap: "under" | "over" }
  | OutsideCorner
  | { readonly kind: "free"; readonly trim: Trim | null };

/**
 * A corner round which the tile turns away. `over`: this wall's tile runs on to the other's face, and
 * its end shows or is finished by a trim; `under`: it ends behind the other's; `mitre`: both meet in a mitre.
 */
export type OutsideCorner =
  | {
      readonly kind: "outside";
      readonly wall: string;
      readonly lap: "over";
      readonly trim: Trim | null;
    }
  | { readonly kind: "outside"; readonly wall: string; readonly lap: "under" | "mitre" };

/** A site reading: `at` along the side (from the left end, or up), `off` up or to the right. */
export interface Reading {
  readonly at: Nm;
  readonly off: Nm;
}

/** The joint between the tile and what it meets. */
export interface EdgeJoint {
  /** `movement` is soft (sealant), `joint` is hard (grout). */
  readonly kind: "movement" | "joint";
  readonly width: Nm;
}

export interface Edge {
  readonly side: Side;
  readonly meets: Meeting;
  /** In order of `at`; empty for a straight side. Two at one place are a riser of an outline. */
  readonly measured: readonly Reading[];
  /** Whether those are the slopes of the wall's outline, as they should be, and no readings of what is out. */
  readonly outlined: boolean;
  /** null when the plan states the edge without a joint. */
  readonly joint: EdgeJoint | null;
  /** false for an edge that the plan leaves to the default. */
  readonly stated: boolean;
  /** The edge's statement; for an unstated edge, the wall's. */
  readonly origin: Origin;
}

/** A meeting with another wall, round an inside or an outside corner. */
export type CornerMeeting = Extract<Meeting, { readonly kind: "corner" | "outside" }>;

/** Whether a side meets another wall at a corner of the room. */
export function isCorner(meets: Meeting): meets is CornerMeeting {
  return meets.kind === "corner" || meets.kind === "outside";
}

/** The trim that ends the tile along a side: on a free one, or where it laps over an outside corner. */
export function edgeTrim(meets: Meeting): Trim | null {
  if (meets.kind === "free") return meets.trim;
  return meets.kind === "outside" && meets.lap === "over" ? meets.trim : null;
}

/** Whether this wall's tile or its trim ends along a side, with nothing before it: free, or over an outside corner. */
export function endsTile(meets: Meeting): boolean {
  return meets.kind === "free" || (meets.kind === "outside" && meets.lap === "over");
}

/** Whether the tile's end shows along a side, since no trim covers it. */
export function showsEnd(meets: Meeting): boolean {
  return endsTile(meets) && edgeTrim(meets) === null;
}
