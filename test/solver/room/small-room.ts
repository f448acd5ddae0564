import { run } from "../../../src/engine.js";
import type { Plan } from "../../../src/model/index.js";

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
