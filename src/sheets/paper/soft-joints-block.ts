import { plainText } from "../../drawing/index.js";
import type { SealantTakeoff } from "../../takeoff/index.js";
import { tableOfSome } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";

/** The joints of a wall that stay free of grout and take sealant. */
export function softJointBlocks(ground: Ground, wall: string): Block[] {
  return softJointTable(
    ground,
    ground.takeoff.materials.sealant.filter((joint) => joint.wall === wall),
  );
}

export function softJointTable(
  { length }: Ground,
  joints: readonly Pick<SealantTakeoff, "along" | "length" | "width" | "depth">[],
): Block[] {
  return tableOfSome(
    "Soft joints: no grout, no mortar in them; sealant last",
    ["Along", ">Length", ">Width", ">Depth"],
    joints.map((joint) => [
      plainText(joint.along),
      length(joint.length),
      length(joint.width),
      length(joint.depth),
    ]),
  );
}
