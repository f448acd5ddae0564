import type { Nm } from "../../measure/index.js";
import type { Frame, Opening, Side, Wall } from "../../model/index.js";
import type { Box } from "../box.js";
import { rangeBetween } from "../chain.js";
import { frameOuter, grownStep } from "../region.js";
import type { Region, TrimRun } from "../solved.js";
import { layStrip, type Strip } from "./strip.js";

/** The floor of the tile round an opening, the steps of its wall's outline, and the joint of the trim. */
export interface FrameGround {
  readonly bottom: Region["bottom"];
  readonly steps: Wall["steps"];
  readonly joint: Nm;
}

/** The trim round an opening, side by side; none where it has no frame. A door's has no bottom. */
export function layFrame(opening: Opening, ground: FrameGround): readonly TrimRun[] {
  const outer = frameOuter(opening);
  if (!outer || !opening.frame) return [];
  const isDoor = opening.reaches === "floor";
  const sides: readonly Side[] = isDoor
    ? ["left", "right", "top"]
    : ["bottom", "left", "right", "top"];
  const { frame } = opening;
  return sides.map((side) => {
    const box = isDoor ? { ...outer, bottom: floorUnder(side, outer, frame, ground) } : outer;
    return layStrip(stripOf(opening, frame, side, box, ground.joint));
  });
}

/** The floor that a door's jamb stands on: under itself alone, since the floor may have a step under the door. */
function floorUnder(
  side: Side,
  outer: Box,
  { trim }: Frame,
  { bottom, steps, joint }: FrameGround,
): Nm {
  const left = side === "right" ? outer.right - trim.face.across : outer.left;
  const right = side === "left" ? outer.left + trim.face.across : outer.right;
  const treads = steps
    .filter((step) => step.meets.top && step.left < right && step.right > left)
    .map((step) => grownStep(step, joint).top);
  return Math.max(rangeBetween(bottom, left, right).high, ...treads);
}

function stripOf(opening: Opening, frame: Frame, side: Side, outer: Box, joint: Nm): Strip {
  const width = frame.trim.face.across;
  const isUpright = side === "left" || side === "right";
  const hasSill = opening.reaches !== "floor";
  const isMitred = frame.join === "mitre";
  // Butted, the sill and the head run through and the jambs stand between them (common practice).
  const back = isUpright && !isMitred ? width + joint : 0;
  const start = hasSill ? back : 0;
  const whole = isUpright ? outer.top - outer.bottom : outer.right - outer.left;
  return {
    along: { opening },
    side,
    length: whole - start - back,
    width,
    piece: frame.trim.face.along,
    joint,
    mitreStart: isMitred && (hasSill || !isUpright) ? width : 0,
    mitreEnd: isMitred ? width : 0,
    bends: [],
    overrun: 0,
    mitreJoints: [],
    cuts: [],
    direction: isUpright ? [0, 1] : [1, 0],
    place: placeOn(side, outer, start),
  };
}

function placeOn(side: Side, box: Box, start: Nm): Strip["place"] {
  switch (side) {
    case "bottom":
      return (along, inward) => [box.left + start + along, box.bottom + inward];
    case "top":
      return (along, inward) => [box.left + start + along, box.top - inward];
    case "left":
      return (along, inward) => [box.left + inward, box.bottom + start + along];
    case "right":
      return (along, inward) => [box.right - inward, box.bottom + start + along];
  }
}
