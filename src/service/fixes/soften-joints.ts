import { exactLength, formatLength } from "../../measure/index.js";
import type { Unit } from "../../measure/index.js";
import { jointsToSoften, type Softening } from "../../rules/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { insertInBlock } from "../insert-in-block.js";
import { statementFrom } from "../statement-from.js";
import type { Fixer } from "./fix.js";

/** States as many soft joints in the tile as it takes for none to stand too far apart, shared out evenly. */
export const softenJoints: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "movement/too-far") return [];
  const { plan, solved } = state.outcome;
  const wall = solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const way = /^the tile is \S.* wide /.test(diagnostic.message) ? "wide" : "high";
  const joints = wall && jointsToSoften(wall, solved, way);
  const edits = joints && editsFor(state, joints);
  if (!edits) return [];
  const places = [...new Set(joints.map((each) => placeOf(each, plan.units)))];
  const title = `Make the ${places.length === 1 ? "joint" : "joints"} ${places.join(", ")} soft`;
  return [{ title, mends: diagnostic, preferred: true, edits }];
};

/** The statements of each block, put in together; null where one can't take them. */
function editsFor(state: DocumentState, joints: readonly Softening[]): TextEdit[] | null {
  const { units } = state.outcome.plan;
  const blocks = [...new Set(joints.map(({ lay }) => lay.origin))];
  const edits = blocks.map((origin) => {
    const block = statementFrom(state, origin);
    const own = joints.filter(({ lay }) => lay.origin === origin);
    const statements = own.map((each) => statementOf(each, units));
    return block?.kind === "lay" ? insertInBlock(state, block, statements) : null;
  });
  return edits.every((edit) => edit !== null) ? edits : null;
}

function statementOf({ joint }: Softening, units: Unit): string {
  return joint.kind === "head"
    ? `movement joint at ${exactLength(joint.x, units)}`
    : `movement joint over course ${joint.over}`;
}

function placeOf({ joint }: Softening, units: Unit): string {
  return joint.kind === "head" ? `at ${formatLength(joint.x, units)}` : `over course ${joint.over}`;
}
