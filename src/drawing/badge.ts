import { makeLabel } from "./labels.js";
import type { Badge, Label, PictureBox } from "./scene.js";

/** A finding's badge, in ems. */
export const BADGE_RADIUS = 0.68;

/** Half of the room that a badge takes with its outline, in its radius. */
export const BADGE_ROOM = 1.08;

/** A badge's number as a label, so that it is measured like every other text. */
export function badgeLabel(badge: Badge): Label {
  return makeLabel({
    text: badge.number,
    role: "number",
    x: badge.middle.x,
    y: badge.middle.y,
    size: badge.radius * 1.15,
    bold: true,
  });
}

/** The room that a badge takes, its outline included. */
export function badgeBox({ middle: { x, y }, radius }: Badge): PictureBox {
  const half = radius * BADGE_ROOM;
  return { left: x - half, right: x + half, top: y - half, bottom: y + half };
}
