import { isCorner } from "../../model/index.js";
import type { SolvedWall } from "../../solver/index.js";
import type { Setting } from "../scene/setting.js";
import { wallTitle } from "../scene/words.js";

/** What is said of the corner between two walls, one fact a line: its kind, which wall covers which, its joint. */
export function cornerLines(left: SolvedWall, right: SolvedWall, setting: Setting): string[] {
  const [one, other] = [left.wall.edges.right, right.wall.edges.left];
  if (!isCorner(one.meets) || !isCorner(other.meets)) return [];
  const kind = one.meets.kind === "corner" ? "inside corner" : "outside corner";
  const over = one.meets.lap === "over" ? left : right;
  const lap = one.meets.lap === "mitre" ? "mitred" : `${wallTitle(over.wall)} covers`;
  // Inside it is the joint of the wall over, outside that of the wall under.
  const holder = (one.meets.lap === "over") === (one.meets.kind === "corner") ? one : other;
  const { joint } = holder;
  const width = joint ? setting.length(joint.width) : null;
  const seam =
    width === null
      ? "no joint stated"
      : `${joint?.kind === "movement" ? "soft" : "grout"} joint ${width}`;
  return [kind, lap, seam];
}
