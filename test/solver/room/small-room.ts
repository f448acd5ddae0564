import { run } from "../../../src/engine.js";
import { NM_PER } from "../../../src/measure/index.js";
import type { Plan } from "../../../src/model/index.js";
import { WallFields } from "../../../src/solver/room/wall-fields.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";

const TILE = "tile field {\n  face 4 x 4\n  thickness 1/4\n}\n";

/** A wall of 40 x 30 in with free sides, in 4 x 4 in tile without joints. */
export function roomWall(name: string, sash: string, lay: string, joint = "0"): string {
  return `wall ${name} {
  size 40 x 30
  bottom free
  top free
  left free
  right free
  ${sash}
  lay field {
    bond stack
    joint ${joint}
    ${lay}
  }
}
`;
}

/** What a plan asks for, before anything free is settled. */
export function askedOf(text: string): Plan {
  const { plan, solved } = run(TILE + text, { file: "a", root: "", read: () => null });
  return solved.room?.asked ?? plan;
}

export const SASH = "window sash {\n at 12, 13\n size 16 x 8\n movement 0\n }";
/** A window that may move 5 in to the right. */
export const MOVING = "window sash {\n at 12 to 17, 13\n size 16 x 8\n movement 0\n }";

export const INCH = NM_PER.inch;

/** The fields of such a wall at its joint of nothing, with wishes before it. */
export function fieldsOn(openings: string, lay: string, wishes = ""): WallFields {
  const plan = askedOf(`${wishes}${roomWall("back", openings, lay)}`);
  const [wall] = plan.walls;
  const wanting = wantingOf(plan, plan.wishes);
  return new WallFields(wanting, wall!, wall!.lays[0]!, 0, { cells: 0 }, 1);
}
