import { plainText } from "../../drawing/index.js";
import { tableOfSome } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";

/** The joints of a wall that stay free of grout and take sealant. */
export function softJointBlocks({ takeoff, length }: Ground, wall: string): Block[] {
  const rows = takeoff.materials.sealant
    .filter((joint) => joint.wall === wall)
    .map((joint) => [
      plainText(joint.along),
      length(joint.length),
      length(joint.width),
      length(joint.depth),
    ]);
  return tableOfSome(
    "Soft joints: no grout, no mortar in them; sealant last",
    ["Along", ">Length", ">Width", ">Depth"],
    rows,
  );
}
