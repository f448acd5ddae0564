import { upWords } from "../../sheets/index.js";
import { clearRuns, rangeBetween } from "../../solver/index.js";
import type { Fix, Fixer } from "./fix.js";
import { stateStart } from "./state-start.js";

/** Starts the courses at the side that is out of level, where one course can take all of it up. */
export const keepInCourse: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "edge/rake") return [];
  const { plan, solved } = state.outcome;
  const wall = solved.walls.find((each) => each.wall.name === diagnostic.wall);
  if (!wall) return [];
  const side = diagnostic.message.startsWith("the bottom ") ? "bottom" : "top";
  const ranges = clearRuns(wall.region, side).map(([from, to]) =>
    rangeBetween(wall.region[side], from, to),
  );
  const high = Math.max(...ranges.map((range) => range.high));
  const low = Math.min(...ranges.map((range) => range.low));
  return wall.lays.flatMap((lay): Fix[] => {
    if (high - low > lay.lattice.face.up) return [];
    const text = upWords({ kind: "full-course", from: side }, plan.units);
    const edit = stateStart(state, lay, "up", text);
    const title = `Take the rake up in one course: ${text}`;
    return edit ? [{ title, mends: diagnostic, preferred: false, edits: [edit] }] : [];
  });
};
